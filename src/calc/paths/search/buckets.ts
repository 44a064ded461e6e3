import type { Space } from './space.ts';
import type { Term } from './terms.ts';

/** The terms that are settled together with one variable, and what else they look at. */
export interface Bucket {
  readonly terms: readonly Term[];
  /** Other variables that it hangs on: all settled before it. */
  readonly context: readonly number[];
}

/** Each term in the bucket of the variable of its scope that is settled last. */
export function bucketsOf(space: Space, order: readonly number[], terms: readonly Term[]): Bucket[] {
  const rank = new Int32Array(order.length);
  for (const [place, variable] of order.entries()) rank[variable] = place;
  const last = ({ scope }: Term): number =>
    scope.reduce((a, b) => (rank[b]! > rank[a]! ? b : a), scope[0] ?? -1);
  return space.variables.map((variable, index) => {
    const own = terms.filter((term) => last(term) === index);
    const asking = variable.after.map((at) => space.variableAt[at]!);
    const context = new Set([...own.flatMap(({ scope }) => scope), ...asking]);
    context.delete(index);
    return { terms: own, context: [...context] };
  });
}
