import type { Formula, Inputs } from '../../src/calc/core/formula.ts';

/** A figure that somebody printed, and what they worked it out from. Shown on the method page as well as tested. */
export interface PublishedRow {
  readonly formula: string;
  /** What is worked out, in a few words: "12.5 mm root, 820 mm, one end fixed". */
  readonly what: string;
  readonly source: { readonly ref: string; readonly at: string };
  /** seen: the figure was read in the source. memory: the source exists, its figure was quoted from memory. */
  readonly provenance: 'seen' | 'memory';
  /** SI, as the formula takes them. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** The figure as printed, significant digits only: '3630', '1.71e5'. Its last digit sets the tolerance. */
  readonly printed: string;
  readonly unit: string;
  /** Our value in the printed unit. */
  readonly ours: number;
  /** Relative tolerance where the source rounds on the way, with the reason. */
  readonly looser?: { readonly by: number; readonly because: string };
}

interface Draft<In, Out> extends Omit<PublishedRow, 'formula' | 'inputs' | 'ours'> {
  readonly inputs: Readonly<In>;
  /** Turns our SI result into the printed unit; the plain result where it is left out. */
  readonly as?: (result: Out) => number;
}

/** One published row, typed by the formula that it checks. */
export function row<In extends Inputs<In>, Out>(
  formula: Formula<In, Out>,
  { as = Number, inputs, ...draft }: Draft<In, Out>,
): PublishedRow {
  return {
    ...draft,
    formula: formula.id,
    inputs: { ...inputs },
    // Worked out when a test asks, so that a fault in the formula fails that test and not the reading of the file.
    get ours() {
      return as(formula.compute(inputs));
    },
  };
}

/** Half of the last printed digit: '26.1' → 0.05, '1.71e5' → 500. */
export function halfLastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** How far ours may lie from the printed figure, in the printed unit. */
export function tolerance({ printed, looser }: PublishedRow): number {
  const byDigit = halfLastDigit(printed) * (1 + 1e-9);
  return Math.max(byDigit, looser ? Math.abs(Number(printed)) * looser.by : 0);
}
