import type { Path } from '../calc/core/path.ts';
import { type Own, splitOwn } from '../export/own.ts';
import { sentPrices } from '../link/prices.ts';
import { sentProgress } from '../link/progress.ts';

/** The part of a path that stays on the device, and the rest that stands in the link. */

/** What only the owner knows of a path. */
export const ownOf = (path: Path): Own => splitOwn(path).own;

/** The answers and figures of one path with the own part of another. */
export const withOwn = (path: Path, own: Own): Path => ({ ...splitOwn(path).path, ...own });

/** The same as a link says it that carries all it may: without notes and names. */
export const asSent = ({ progress, ...prices }: Own): Own => ({
  ...sentPrices(prices),
  ...(progress ? { progress: sentProgress(progress) } : {}),
});

/** Whether two say the same, whatever the order they were typed in. */
export const sameOwn = (a: Own, b: Own): boolean => written(a) === written(b);

const written = (own: Own): string =>
  JSON.stringify(own, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
