import { bandQuantile } from '../formulas/bands.ts';
import { curveOf, type Values, type WorkingFigure } from './figure.ts';

const weeks = { unit: 'weeks', one: 'week', per: 1 } as const;
const orders = { unit: 'of 20', per: 1 } as const;
const [OF, LAST] = [20, 26];

/** The three guesses in order, whichever way they were put in. */
function inOrder(guesses: readonly number[]) {
  const [low = 0, likely = 0, high = 0] = guesses.toSorted((a, b) => a - b);
  return { low, likely, high, shape: 'pert' } as const;
}

function answer({ quick = 0, usual = 0, slow = 0, ahead = 0 }: Values) {
  const band = inOrder([quick, usual, slow]);
  const after = (p: number) => bandQuantile.compute({ ...band, p });
  const there = Array.from({ length: OF }, (_, at) => after((at + 0.5) / OF)).filter(
    (each) => each <= ahead,
  ).length;
  const within = (p: number) => Math.ceil(after(p) - 1e-9);
  // Both ends are flat, so the shares lie closer there.
  const climbing = curveOf(0, 1, (u) => u * u * (3 - 2 * u), 24).map(([, p]) => [after(p), p * OF] as const);
  return {
    say:
      there === OF
        ? 'Ordered {ahead} ahead it is there in {there} such orders.'
        : 'Ordered {ahead} ahead it is there in {there} such orders. For 19 of 20, order {needed} ahead.',
    rows: [
      { id: 'there', label: 'There in time', value: there, written: orders },
      { id: 'half', label: 'Half are there within', value: within(0.5), written: weeks },
      { id: 'needed', label: '19 of 20 are there within', value: within(0.95), written: weeks },
    ],
    curves: [{ name: 'orders that are there', points: [[0, 0], ...climbing, [LAST, OF]] }],
    mark: [ahead, there],
  } as const;
}

const guess = { unit: 'week', written: weeks, low: 0.5, high: LAST, step: 0.5 } as const;

/** In how many of 20 orders a parcel is there in time, by the weeks that it is ordered ahead. */
export const leadTime: WorkingFigure = {
  id: 'lead-time',
  topic: 'buying-and-lead-times',
  question: 'How many weeks ahead must it be ordered?',
  begin:
    'Ask the seller for a quick, a usual and a slow delivery. The slow one is what happened once, not what is promised.',
  inputs: [
    { id: 'quick', label: 'Quick delivery', ...guess, example: 2 },
    { id: 'usual', label: 'Usual delivery', ...guess, example: 4 },
    { id: 'slow', label: 'Slow delivery', ...guess, example: 12 },
    { id: 'ahead', label: 'Ordered ahead', ...guess, example: 6 },
  ],
  across: { label: 'weeks after the order', written: weeks },
  up: { label: 'of 20 such orders', written: orders },
  formulas: [bandQuantile.id],
  answer,
};
