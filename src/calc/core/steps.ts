import type { Quantity, Unit } from './quantity.ts';

/** Plain arithmetic between figures: no law of nature, so no source; an explanation shows it in words. */
export const steps = {
  sum: { label: 'Added up', equation: 'all of them added' },
  difference: { label: 'Taken off', equation: 'from − less' },
  product: { label: 'Multiplied', equation: 'all of them multiplied' },
  quotient: { label: 'Divided', equation: 'of ÷ by' },
  largest: { label: 'The largest of them', equation: 'the largest of them' },
  smallest: { label: 'The smallest of them', equation: 'the smallest of them' },
} as const;

export type StepId = keyof typeof steps;

type Terms = Readonly<Record<string, Quantity | undefined>>;

function step(
  id: StepId,
  unit: Unit,
  terms: Terms,
  compute: (values: readonly number[]) => number,
): Quantity | undefined {
  const given = Object.values(terms).filter((term) => term !== undefined);
  if (given.length < Object.keys(terms).length || given.length === 0) return undefined;
  const value = compute(given.map((term) => term.value));
  if (!Number.isFinite(value)) return undefined;
  return { value, unit, origin: { kind: 'derived', formula: id, inputs: terms as Record<string, Quantity> } };
}

const unitOf = (terms: Terms): Unit => Object.values(terms)[0]?.unit ?? '1';

/** Sum of figures of one unit; undefined where one is missing, as in all steps. */
export const sumOf = (terms: Terms): Quantity | undefined =>
  step('sum', unitOf(terms), terms, (values) => values.reduce((sum, value) => sum + value, 0));

export const largestOf = (terms: Terms): Quantity | undefined =>
  step('largest', unitOf(terms), terms, (values) => Math.max(...values));

export const smallestOf = (terms: Terms): Quantity | undefined =>
  step('smallest', unitOf(terms), terms, (values) => Math.min(...values));

export const differenceOf = (from: Quantity | undefined, less: Quantity | undefined): Quantity | undefined =>
  step('difference', unitOf({ from }), { from, less }, ([a, b]) => a! - b!);

/** Product of figures; the unit of the result is said by the caller. */
export const productOf = (unit: Unit, terms: Terms): Quantity | undefined =>
  step('product', unit, terms, (values) => values.reduce((product, value) => product * value, 1));

export const quotientOf = (
  unit: Unit,
  of: Quantity | undefined,
  by: Quantity | undefined,
): Quantity | undefined => step('quotient', unit, { of, by }, ([a, b]) => a! / b!);
