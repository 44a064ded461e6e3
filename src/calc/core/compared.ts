import type { Path } from './path.ts';

/** One column of a comparison: a way of converting, or something else that answers the same wish. */
export type Compared =
  | { readonly kind: 'path'; readonly path: Path }
  | { readonly kind: 'alternative'; readonly id: string };

/** More columns than this are no longer weighed against each other; people fall back on one knock-out. */
export const MOST_COMPARED = 4;
