import type { CheckRule } from './core/check.ts';
import type { SubsystemId } from './core/decision.ts';
import type { Figure } from './core/figure.ts';
import type { Part } from './core/part.ts';
import type { Risk } from './core/risk.ts';
import type { Rule } from './core/rule.ts';
import type { Task } from './core/task.ts';
import * as approach from './subsystems/approach/index.ts';
import * as carriage from './subsystems/carriage/index.ts';
import * as control from './subsystems/control/index.ts';
import * as crossSlide from './subsystems/cross-slide/index.ts';
import * as motors from './subsystems/motors/index.ts';
import * as purpose from './subsystems/purpose/index.ts';
import * as spindle from './subsystems/spindle/index.ts';
import * as tooling from './subsystems/tooling/index.ts';
import * as wiring from './subsystems/wiring/index.ts';

const byRoom = {
  purpose,
  approach,
  carriage,
  'cross-slide': crossSlide,
  tooling,
  motors,
  control,
  spindle,
  wiring,
};
const all = Object.values(byRoom);

/** Everything the trade knows, gathered from the nine subsystems. */
export const parts: readonly Part[] = all.flatMap((each) => each.parts);
export const tasks: readonly Task[] = all.flatMap((each) => each.tasks);
export const risks: readonly Risk[] = all.flatMap((each) => each.risks);
export const rules: readonly Rule[] = all.flatMap((each) => each.rules);

/** Figures of the design, and the checks made on them, in order of the rooms. */
export const figures: readonly Figure[] = all.flatMap((each) => each.figures);
export const checkRules: readonly { readonly subsystem: SubsystemId; readonly rule: CheckRule }[] =
  Object.entries(byRoom).flatMap(([subsystem, { checks }]) =>
    checks.map((rule) => ({ subsystem: subsystem as SubsystemId, rule })),
  );

const index = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, number> =>
  new Map(list.map((each, at) => [each.id, at]));

export const taskIndex = index(tasks);
