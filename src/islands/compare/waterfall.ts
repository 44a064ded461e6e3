import type { Share, TypicalDifference } from '../../calc/comparing.ts';

/** One step from the typical figure of the second path to that of the first. Hundredths inside, so that it adds up. */
export interface Step {
  /** Undefined: all that is smaller, in one step. */
  readonly share: Share | undefined;
  readonly by: number;
  readonly from: number;
  readonly to: number;
}

const HUNDREDTHS = 100;
const whole = (n: number): number => Math.round(n * HUNDREDTHS);

/** So many steps are drawn singly until the reader asks for all. */
export const DRAWN = 8;

/** Shares that move this measure at all, the largest first. */
export const sharesIn = (measure: 'money' | 'hours', shares: readonly Share[]): Share[] =>
  shares
    .filter((share) => whole(share[measure]) !== 0)
    .toSorted((p, q) => Math.abs(q[measure]) - Math.abs(p[measure]));

/** The steps, largest first, from `b` to `a`; past the eighth they stand as one unless all are wanted. */
export function stepsOf(
  measure: 'money' | 'hours',
  shares: readonly Share[],
  { b }: TypicalDifference,
  all: boolean,
): Step[] {
  const moving = sharesIn(measure, shares);
  const single = all || moving.length <= DRAWN + 1 ? moving : moving.slice(0, DRAWN);
  const rest = moving.slice(single.length).reduce((sum, share) => sum + whole(share[measure]), 0);
  const parts = [
    ...single.map((share) => ({ share, by: whole(share[measure]) })),
    ...(single.length < moving.length ? [{ share: undefined, by: rest }] : []),
  ];
  let at = whole(b);
  return parts.map(({ share, by }) => {
    const from = at;
    at += by;
    return { share, by: by / HUNDREDTHS, from: from / HUNDREDTHS, to: at / HUNDREDTHS };
  });
}
