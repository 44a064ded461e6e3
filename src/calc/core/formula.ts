import type { Quantity, Unit } from './quantity.ts';

/** A formula of the trade with its source and the range it was stated for. Inputs and result are SI. */
export interface Formula<I extends string = string, U extends Unit = Unit> {
  readonly id: string;
  readonly label: string;
  readonly equation: string;
  readonly inputs: Readonly<Record<I, Unit>>;
  readonly unit: U;
  readonly source: { readonly ref: string; readonly at: string };
  /** Lowest and highest input the source speaks of. Outside it the value is worked out all the same, and said so. */
  readonly valid: Readonly<Partial<Record<I, readonly [low: number, high: number]>>>;
  readonly compute: (inputs: Readonly<Record<I, number>>) => number;
}

/** Names of the inputs that lie outside what the source speaks of. */
export function outsideRange<I extends string>(
  formula: Formula<I>,
  inputs: Readonly<Record<I, number>>,
): I[] {
  return (Object.keys(formula.valid) as I[]).filter((name) => {
    const range = formula.valid[name];
    return range !== undefined && (inputs[name] < range[0] || inputs[name] > range[1]);
  });
}

/** The formula's value with its inputs kept as its origin. */
export function derive<I extends string, U extends Unit>(
  formula: Formula<I, U>,
  inputs: Readonly<Record<I, Quantity>>,
): Quantity<U> {
  const numbers = Object.fromEntries(
    Object.entries<Quantity>(inputs).map(([name, quantity]) => [name, quantity.value]),
  ) as Record<I, number>;
  return {
    value: formula.compute(numbers),
    unit: formula.unit,
    origin: { kind: 'derived', formula: formula.id, inputs },
  };
}
