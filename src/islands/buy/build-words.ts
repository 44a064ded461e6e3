import type { WorstBuild } from '../../calc/worst-builds.ts';
import { money } from '../shared/format.ts';

const dollars = (cents: number): string => money(cents / 100);

/** Under ten dollars it is not worth a word. */
const NEXT_TO_NOTHING = 1000;

function restWords(cents: number): string {
  if (Math.abs(cents) < NEXT_TO_NOTHING) return 'little else';
  return cents < 0
    ? `everything else ${dollars(-cents)} cheaper`
    : `everything else ${dollars(cents)} dearer`;
}

const standing = (place: number): string => {
  if (place === 20) return 'the dearest of the 20';
  return place === 1 ? 'the cheapest of the 20' : `number ${place} of the 20`;
};

/** What one of the twenty comes to, where it stands, and what made it so. */
export const buildWords = ({ place, money: cents, reasons, rest }: WorstBuild) => ({
  money: dollars(cents),
  standing: standing(place),
  reasons: [...reasons.map(({ say, cents: dearer }) => `${say} (${dollars(dearer)})`), restWords(rest)].join(
    '; ',
  ),
});
