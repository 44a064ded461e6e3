import type { Money } from './money.ts';
import type { OriginInput, Quantity, Unit } from './quantity.ts';

/**
 * What one input of a formula may hold: a figure, a list of figures, a named case such as how a screw is held,
 * an exact sum of money, or a list of named things such as the activities of a plan.
 */
export type InputValue = number | string | readonly number[] | Money | readonly object[];

/** The named inputs of a formula: figures unless the formula says otherwise. */
export type Inputs<In> = { readonly [K in keyof In]: InputValue };

/**
 * A formula of the trade with its source and the range it was stated for. Inputs and result are SI.
 * `compute` never throws on figures: what has no answer comes back as NaN, and the caller says "needs …".
 */
export interface Formula<In extends Inputs<In> = Record<string, number>, Out = number> {
  /** kebab-case, permanent. */
  readonly id: string;
  readonly label: string;
  /** The equation in one line of plain text, with the names of the inputs. */
  readonly equation: string;
  /** The same equation in TeX, made into MathML when the site is built. */
  readonly tex: string;
  /** Unit of each input; 'case' for a named case. A list has one unit for all. */
  readonly inputs: { readonly [K in keyof In]: Unit | 'case' };
  readonly unit: Unit;
  readonly source: { readonly ref: string; readonly at: string };
  /** Lowest and highest input the source speaks of. Outside it the value is worked out all the same, and said so. */
  readonly valid: { readonly [K in keyof In]?: readonly [low: number, high: number] };
  /** Why no published figure stands beside it; only where none does. The screen says so. */
  readonly unverified?: string;
  readonly compute: (inputs: Readonly<In>) => Out;
}

/** Names of the inputs that lie outside what the source speaks of. */
export function outsideRange<In extends Inputs<In>>(
  formula: Pick<Formula<In, unknown>, 'valid'>,
  inputs: Readonly<In>,
): (keyof In & string)[] {
  const names = Object.keys(formula.valid) as (keyof In & string)[];
  return names.filter((name) => {
    const [low, high] = formula.valid[name]!;
    return [inputs[name]].flat().some((value) => typeof value === 'number' && (value < low || value > high));
  });
}

/** The inputs of a formula as quantities: one for a figure, a list for a list, a word for a named case. */
export type InputQuantities<In> = { readonly [K in keyof In]: OriginOf<In[K]> | undefined };

type OriginOf<V> =
  NonNullable<V> extends number
    ? Quantity
    : NonNullable<V> extends string
      ? NonNullable<V>
      : readonly Quantity[];

/** The bare values of an input, as a formula takes them. */
export const plainOf = (input: OriginInput): InputValue =>
  typeof input === 'string' ? input : 'value' in input ? input.value : input.map(({ value }) => value);

/**
 * A formula's value with its inputs kept as its origin. Undefined where an input is missing or the answer is no figure:
 * a screen then says what it needs. `pick` takes one figure out of a result that holds several.
 */
export function derive<In extends Inputs<In>, Out>(
  formula: Formula<In, Out>,
  inputs: InputQuantities<In>,
  pick: (out: Out) => number = Number,
): Quantity | undefined {
  const given = Object.entries(inputs) as [string, OriginInput | undefined][];
  const present = given.filter((entry): entry is [string, OriginInput] => entry[1] !== undefined);
  if (present.length < given.length) return undefined;
  const figures = Object.fromEntries(present.map(([name, input]) => [name, plainOf(input)]));
  const value = pick(formula.compute(figures as Readonly<In>));
  if (!Number.isFinite(value)) return undefined;
  return {
    value,
    unit: formula.unit,
    origin: { kind: 'derived', formula: formula.id, inputs: Object.fromEntries(present) },
  };
}
