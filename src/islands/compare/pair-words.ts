import type { Pair, PairSide } from '../../calc/comparing.ts';
import { toShown } from '../shared/currency.ts';
import { hours, listed, money, roundHours, roundMoney } from '../shared/format.ts';

export type Measure = 'money' | 'hours';

interface Kind {
  readonly more: string;
  readonly fewer: string;
  readonly same: string;
  readonly round: (n: number) => number;
  readonly say: (n: number) => string;
}

/** The same rounding on either side of nothing, so that a pair reads the same from either side. */
const alike = (n: number, round: (n: number) => number): number => (n < 0 ? 0 - round(-n) : round(n));

const KINDS: Readonly<Record<Measure, Kind>> = {
  money: {
    more: 'costs more than',
    fewer: 'costs less than',
    same: 'cost the same',
    round: (n) => alike(toShown(n), roundMoney),
    say: money,
  },
  hours: {
    more: 'takes more hours than',
    fewer: 'takes fewer hours than',
    same: 'take the same hours',
    round: (n) => alike(n, roundHours),
    say: hours,
  },
};

const LESS: Readonly<Record<Measure, string>> = { money: 'less', hours: 'fewer' };

/** "by between nothing and $250", "between $120 less and $250 more": the middle half, seen from the first. */
function sayHalf(measure: Measure, from: number, to: number, isMore: boolean): string {
  const { round, say } = KINDS[measure];
  const [low, high] = isMore ? [from, to] : [-to, -from];
  const [a, b] = [round(low), round(high)];
  if (a === 0 && b === 0) return 'by next to nothing';
  if (a < 0 && b > 0) {
    const [under, over] = isMore ? [say(-low), say(high)] : [say(high), say(-low)];
    return `between ${under} ${LESS[measure]} and ${over} more`;
  }
  if (a < 0) return `between ${say(-low)} ${isMore ? LESS[measure] : 'more'} and the same`;
  if (a === b) return `by about ${say(high)}`;
  return `by between ${a === 0 ? 'nothing' : say(low)} and ${say(high)}`;
}

/** "A costs more than B in 15 of 20 ways it could turn out; half of the time by between nothing and $250." */
export function saySide(measure: Measure, side: PairSide, a: string, b: string): string {
  const { more, fewer, same } = KINDS[measure];
  if (side.same === 20) return `${a} and ${b} ${same} in all 20 ways it could turn out.`;
  const isMore = side.above >= side.below;
  const count = Math.max(side.above, side.below);
  const even = side.above === side.below ? ` and ${LESS[measure]} in ${side.below}` : '';
  const equal = side.same > 0 ? ` and the same in ${side.same}` : '';
  const verb = isMore ? more : fewer;
  const half = sayHalf(measure, side.from, side.to, isMore);
  return `${a} ${verb} ${b} in ${count} of 20 ways it could turn out${even}${equal}; half of the time ${half}.`;
}

/** Not told apart, and not the same either. */
export const isTie = ({ reading, same }: PairSide): boolean => reading === 'tie' && same < 20;

/** Ties called ties, and what is left to choose on. `rows` are the names of what differs besides. */
export function sayTie({ money, hours }: Pair, rows: readonly string[]): string {
  const ties = [isTie(money) ? 'in money' : '', isTie(hours) ? 'in hours' : ''].filter(Boolean);
  if (ties.length === 0) return '';
  const where = ties.length === 2 ? 'A tie in money and in hours' : `A tie ${ties[0]}`;
  const on = rows.slice(0, 3).map((row) => row.toLowerCase());
  const choose = isTie(money) ? ` Choose on ${listed([...on, 'what you like to build'])}.` : '';
  return `${where}, within what anyone can know today.${choose}`;
}

/** The same pair seen from the other side. */
export function mirrored({ a, b, money, hours }: Pair): Pair {
  return { a: b, b: a, money: turned(money), hours: turned(hours) };
}

const minus = (n: number): number => 0 - n;

function turned(side: PairSide): PairSide {
  const { above, below, from, to, p10, p50, p90, reading, twenty } = side;
  return {
    ...side,
    above: below,
    below: above,
    from: minus(to),
    to: minus(from),
    p10: minus(p90),
    p50: minus(p50),
    p90: minus(p10),
    reading: reading === 'above' ? 'below' : reading === 'below' ? 'above' : 'tie',
    twenty: twenty.map(minus).reverse(),
  };
}
