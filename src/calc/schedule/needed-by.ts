import type { NeededBy } from '../core/part.ts';
import { neededBy as approach } from '../subsystems/approach/needed-by.ts';
import { neededBy as carriage } from '../subsystems/carriage/needed-by.ts';
import { neededBy as control } from '../subsystems/control/needed-by.ts';
import { neededBy as crossSlide } from '../subsystems/cross-slide/needed-by.ts';
import { neededBy as motors } from '../subsystems/motors/needed-by.ts';
import { neededBy as purpose } from '../subsystems/purpose/needed-by.ts';
import { neededBy as spindle } from '../subsystems/spindle/needed-by.ts';
import { neededBy as tooling } from '../subsystems/tooling/needed-by.ts';
import { neededBy as wiring } from '../subsystems/wiring/needed-by.ts';

const groups: readonly NeededBy[] = [
  ...purpose,
  ...approach,
  ...carriage,
  ...crossSlide,
  ...tooling,
  ...motors,
  ...control,
  ...spindle,
  ...wiring,
];

/** Tasks that need a part, by part id. */
export const tasksNeeding: ReadonlyMap<string, readonly string[]> = new Map(
  groups.flatMap(({ parts, tasks }) => parts.map((part) => [part, tasks] as const)),
);

/** The last moment for a part that none of its tasks asks for on this path. */
const AT_THE_LATEST = 'first-power-on-machine';

/** The tasks of a plan that wait for a part; never empty. */
export function needersOf(part: string, inPlan: ReadonlySet<string>): readonly string[] {
  const tasks = (tasksNeeding.get(part) ?? []).filter((task) => inPlan.has(task));
  return tasks.length > 0 ? tasks : [AT_THE_LATEST];
}
