/**
 * A condition on what has been chosen and what has been measured, written as data so that it can be
 * compiled, listed and proved to look only at questions asked earlier.
 */
export type Condition =
  | { readonly kind: 'always' }
  | { readonly kind: 'is'; readonly decision: string; readonly options: readonly string[] }
  | { readonly kind: 'only'; readonly decision: string; readonly options: readonly string[] }
  | { readonly kind: 'asked'; readonly decision: string }
  | { readonly kind: 'below'; readonly fact: string; readonly value: number }
  | { readonly kind: 'known'; readonly fact: string }
  | {
      readonly kind: 'measure';
      readonly measure: string;
      readonly above: number | { readonly fact: string; readonly times: number };
    }
  | { readonly kind: 'all'; readonly of: readonly Condition[] }
  | { readonly kind: 'any'; readonly of: readonly Condition[] }
  | { readonly kind: 'not'; readonly of: Condition };

export const always: Condition = { kind: 'always' };

/** One of these options is chosen (of a many-answer question: at least one of them is ticked). */
export const is = (decision: string, ...options: string[]): Condition => ({ kind: 'is', decision, options });

/** Nothing but these options is ticked. */
export const only = (decision: string, ...options: string[]): Condition => ({
  kind: 'only',
  decision,
  options,
});

/** The question arises on this path at all. */
export const asked = (decision: string): Condition => ({ kind: 'asked', decision });

/** The question arises and none of these options is chosen. */
export const isNot = (decision: string, ...options: string[]): Condition =>
  all(asked(decision), not(is(decision, ...options)));

/** A figure of the lathe or the workshop is under the value, in SI units (metres, watts, kilograms …). */
export const below = (fact: string, value: number): Condition => ({ kind: 'below', fact, value });

/** A figure of the lathe or the workshop is at or above the value, in SI units. */
export const atLeast = (fact: string, value: number): Condition => not(below(fact, value));

/** The owner gave this figure; it is not a typical one of the size class. */
export const known = (fact: string): Condition => ({ kind: 'known', fact });

/** A worked-out figure is above a value, or above a share of one of the lathe's figures. */
export const measureAbove = (
  measure: string,
  above: number | { readonly fact: string; readonly times: number },
): Condition => ({ kind: 'measure', measure, above });

export const all = (...of: Condition[]): Condition => ({ kind: 'all', of });
export const any = (...of: Condition[]): Condition => ({ kind: 'any', of });
export const not = (of: Condition): Condition => ({ kind: 'not', of });

/** Every condition inside a condition, itself first. */
export function walk(condition: Condition): Condition[] {
  if (condition.kind === 'all' || condition.kind === 'any') {
    return [condition, ...condition.of.flatMap(walk)];
  }
  return condition.kind === 'not' ? [condition, ...walk(condition.of)] : [condition];
}

/** Ids of the decisions that a condition looks at, each once. */
export function decisionsIn(condition: Condition): string[] {
  return [...new Set(walk(condition).flatMap((part) => ('decision' in part ? [part.decision] : [])))];
}
