import type { State } from '../choices/state.ts';
import { workAt } from '../schedule/work.ts';
import { parts } from '../trade.ts';
import { strikesAt, unitsAt } from './counting.ts';
import { measured, partsLookingAt, risksLookingAt, tasksLookingAt } from './looks-at.ts';
import { countingOf, type Present, type WayNow } from './present.ts';

/** What a change adds to a way, less what it takes away: columns and how often they count. */
export interface Deltas {
  readonly parts: readonly { readonly at: number; readonly times: number }[];
  readonly tasks: readonly { readonly at: number; readonly times: number }[];
  readonly extras: readonly { readonly id: string; readonly times: number }[];
  /** Builds that a risk strikes, and builds in which its money is paid, before and after. */
  readonly risks: readonly {
    readonly at: number;
    readonly before: ReturnType<typeof strikesAt>;
    readonly after: ReturnType<typeof strikesAt>;
  }[];
}

/** What a way with other choices needs more or less than the way as it stands. */
export function deltasOf(present: Present, now: WayNow, after: State, changed: readonly number[]): Deltas {
  const again = looked(now, changed);
  const counting = countingOf(present, after);
  const { owned } = present.planned.path;
  const bought = again.parts.flatMap((at) => {
    const times = unitsAt(at, counting) - now.units[at]!;
    return times === 0 ? [] : [{ at, times }];
  });
  const tasks: Deltas['tasks'][number][] = [];
  const extras: Deltas['extras'][number][] = [];
  for (const at of again.tasks) {
    const was = now.work[at]!;
    const then = workAt(at, after);
    if (then.times !== was.times) tasks.push({ at, times: then.times - was.times });
    for (const id of new Set([...then.extras, ...was.extras])) {
      const times = timesOf(then, id) - timesOf(was, id);
      if (times !== 0) extras.push({ id, times });
    }
  }
  const risks = again.risks.flatMap((at) => {
    const before = now.strikes[at]!;
    const then = strikesAt(at, counting);
    const same = then.builds === before.builds && then.paid === before.paid;
    return same ? [] : [{ at, before, after: then }];
  });
  return { parts: paid(bought, owned), tasks, extras, risks };
}

/** How often the hours of an extra piece of work count. */
export const timesOf = ({ extras, timesExtra }: ReturnType<typeof workAt>, id: string): number =>
  extras.includes(id) ? timesExtra : 0;

/** What is in the drawer costs nothing, and what is paid every year stands in no total. */
const paid = (list: Deltas['parts'], owned: readonly string[]): Deltas['parts'] =>
  list.filter(({ at }) => parts[at]!.yearly !== true && !owned.includes(parts[at]!.id));

/** Positions of what has to be counted again. */
export interface Again {
  readonly parts: readonly number[];
  readonly tasks: readonly number[];
  readonly risks: readonly number[];
}

/** Positions of all that looks at a changed question, itself or through a figure of the design. */
export function looked(now: Pick<WayNow, 'reads'>, changed: readonly number[]): Again {
  const through = measured.filter((_, at) => changed.some((position) => now.reads[at]!.has(position)));
  const only = changed[0]!;
  if (changed.length === 1 && through.length === 0)
    return { parts: partsLookingAt[only]!, tasks: tasksLookingAt[only]!, risks: risksLookingAt[only]! };
  const gather = (by: readonly (readonly number[])[], own: 'parts' | 'tasks' | 'risks'): number[] => [
    ...new Set([...changed.flatMap((at) => by[at]!), ...through.flatMap((each) => each[own])]),
  ];
  return {
    parts: gather(partsLookingAt, 'parts'),
    tasks: gather(tasksLookingAt, 'tasks'),
    risks: gather(risksLookingAt, 'risks'),
  };
}

/** The same for the same needs, whatever the path. */
export const keyOf = ({ parts, tasks, extras, risks }: Deltas): string =>
  parts.map(({ at, times }) => `p${at}x${times}`).join('') +
  tasks.map(({ at, times }) => `t${at}x${times}`).join('') +
  extras.map(({ id, times }) => `${id}x${times}`).join('') +
  risks
    .map(({ at, before, after }) => `r${at}x${before.builds}x${after.builds}x${before.paid}x${after.paid}`)
    .join('');
