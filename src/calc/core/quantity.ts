/** Where a value comes from; "why this number" follows it back to the answers. */
export type Origin =
  | { readonly kind: 'answered' }
  | { readonly kind: 'assumed'; readonly why: string }
  /** Follows from the answer to a question: a screw bought with a lead of 5 mm. */
  | { readonly kind: 'chosen'; readonly decision: string; readonly option: string; readonly why: string }
  | { readonly kind: 'published'; readonly source: string }
  | {
      readonly kind: 'derived';
      readonly formula: string;
      readonly inputs: Readonly<Record<string, OriginInput>>;
    };

/** What went into a worked-out value: a quantity, several, or a named case. */
export type OriginInput = Quantity | readonly Quantity[] | string;

/** Units the model works in: SI, money, and the few the trade states a law in. `1` is a plain number. */
export type Unit =
  | ('m' | 'm²' | 'm/s' | 'm/s²' | 'm³/s' | '1/m' | 'm/rev' | 'rad')
  | ('kg' | 'kg/m³' | 'kg·m' | 'kg·m²' | 'N' | 'N·m' | 'N/m' | 'Pa' | 'J' | 'W')
  | ('s' | 'h' | 'year' | 'week' | 'h/week' | 'Hz' | 'rev' | 'rev/s' | 'rad/s²' | 'mm·rpm')
  | ('A' | 'V' | 'H' | 'F' | 'ohm' | 'K' | '°C')
  | ('$' | '$/h' | '1');

/** A number with its unit in the type and its origin in the value. */
export interface Quantity<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
  readonly origin: Origin;
  /** Which figure this is, so that an explanation can name it and link to it: a fact of the lathe, or a design figure. */
  readonly of?: { readonly fact: string } | { readonly figure: string };
}

export const answered = <U extends Unit>(value: number, unit: U): Quantity<U> => ({
  value,
  unit,
  origin: { kind: 'answered' },
});

export const assumed = <U extends Unit>(value: number, unit: U, why: string): Quantity<U> => ({
  value,
  unit,
  origin: { kind: 'assumed', why },
});

export const published = <U extends Unit>(value: number, unit: U, source: string): Quantity<U> => ({
  value,
  unit,
  origin: { kind: 'published', source },
});

/** A value that an answer brings with it, from memory of the trade unless `why` names more. */
export const chosen = <U extends Unit>(
  value: number,
  unit: U,
  decision: string,
  option: string,
  why: string,
): Quantity<U> => ({ value, unit, origin: { kind: 'chosen', decision, option, why } });
