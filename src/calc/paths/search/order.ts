import { askedAfter } from '../../choices/exclusions.ts';
import type { Space } from './space.ts';
import type { Term } from './terms.ts';

/**
 * In which order questions are settled: first those that many others hang on and those that the margins look at, so that
 * bounds are tight early; each behind what it has to come after.
 */
export function orderOf(space: Space, terms: readonly Term[], looked: ReadonlySet<number>): number[] {
  const weight = space.variables.map(({ at }, index) => {
    const tied =
      space.exclusions.filter(({ involved }) => involved.includes(at)).length + askedAfter[at]!.length;
    const shared = terms.filter(({ scope }) => scope.length > 1 && scope.includes(index)).length;
    return 2 * tied + shared + (looked.has(at) ? 60 : 0);
  });
  const order: number[] = [];
  const left = new Set(space.variables.keys());
  const isReady = (index: number): boolean =>
    space.variables[index]!.after.every((at) => !left.has(space.variableAt[at]!));
  while (left.size > 0) {
    const ready = [...left].filter(isReady);
    const next = ready.find((index) => !space.variables[index]!.free) ?? heaviest(ready, weight);
    order.push(next);
    left.delete(next);
  }
  return order;
}

const heaviest = (of: readonly number[], weight: readonly number[]): number =>
  of.reduce((a, b) => (weight[b]! > weight[a]! ? b : a));
