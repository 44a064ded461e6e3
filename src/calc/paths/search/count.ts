import { askedAfter, type Exclusion, isViolated } from '../../choices/exclusions.ts';
import type { State } from '../../choices/state.ts';
import { candidates, type Space } from './space.ts';

/** Exclusions by the variable that settles them in guide order. */
function lastSettled(space: Space): Exclusion[][] {
  const by: Exclusion[][] = space.variables.map(() => []);
  for (const exclusion of space.exclusions) {
    const last = Math.max(...exclusion.involved.map((at) => space.variableAt[at]!));
    if (last >= 0) by[last]!.push(exclusion);
  }
  return by;
}

/** For each step in guide order the earlier variables that something later still looks at. */
function stillWanted({ variables, variableAt, exclusions }: Space): number[][] {
  const latest = variables.map((_, index) => index);
  const link = (positions: readonly number[]): void => {
    const indexes = positions.map((at) => variableAt[at]!).filter((index) => index >= 0);
    const last = Math.max(...indexes);
    for (const index of indexes) latest[index] = Math.max(latest[index]!, last);
  };
  for (const { involved } of exclusions) link(involved);
  for (const { at } of variables) for (const other of askedAfter[at]!) link([at, other]);
  return variables.map((_, step) =>
    variables.flatMap((__, index) => (index < step && latest[index]! >= step ? [index] : [])),
  );
}

/**
 * How many legal paths a space holds, without going through them: question by question, ways of answering that look the
 * same to all later questions are counted together. Exact to 2^53.
 */
export function countLegal(space: Space, state: State): number {
  const settledBy = lastSettled(space);
  const wanted = stillWanted(space);
  let counts = new Map<string, { masks: readonly number[]; count: number }>([['', { masks: [], count: 1 }]]);
  for (const [step, variable] of space.variables.entries()) {
    const later = wanted[step + 1] ?? [];
    const keep = [...wanted[step]!, step].filter((index) => later.includes(index));
    const next: typeof counts = new Map();
    for (const { masks, count } of counts.values()) {
      for (const [place, index] of wanted[step]!.entries())
        state.masks[space.variables[index]!.at] = masks[place]!;
      for (const mask of candidates(space, variable, state)) {
        state.masks[variable.at] = mask;
        if (settledBy[step]!.some((exclusion) => isViolated(exclusion, state))) continue;
        const kept = keep.map((index) => state.masks[space.variables[index]!.at]!);
        const key = kept.join(' ');
        next.set(key, { masks: kept, count: (next.get(key)?.count ?? 0) + count });
      }
      state.masks[variable.at] = 0;
    }
    counts = next;
  }
  return [...counts.values()].reduce((sum, { count }) => sum + count, 0);
}
