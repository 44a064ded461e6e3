import type { WorstBuild } from '../../calc/worst-builds.ts';
import { money } from '../shared/format.ts';

const dollars = (cents: number): string => money(cents / 100);

/** Under ten dollars it is not worth a word. */
const NEXT_TO_NOTHING = 1000;

/** "$230 dearer" */
const moved = (cents: number): string => `${dollars(Math.abs(cents))} ${cents < 0 ? 'cheaper' : 'dearer'}`;

const restWords = (cents: number): string =>
  Math.abs(cents) < NEXT_TO_NOTHING ? 'little else' : `everything else ${moved(cents)}`;

const standing = (place: number): string => {
  if (place === 20) return 'the dearest of the 20';
  return place === 1 ? 'the cheapest of the 20' : `number ${place} of the 20`;
};

/** What one of the twenty comes to, where it stands, and what made it so. */
export const buildWords = ({ place, money: all, reasons, rest }: WorstBuild) => ({
  money: dollars(all),
  standing: standing(place),
  reasons: [...reasons.map(({ say, cents }) => `${say} (${moved(cents)})`), restWords(rest)].join('; '),
});
