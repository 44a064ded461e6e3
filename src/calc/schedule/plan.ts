import { compile, type State } from '../choices/state.ts';
import { is } from '../core/condition.ts';
import type { PlannedTask, StagePlan } from '../report.ts';
import { orderOf, prerequisites } from './sequence.ts';
import { stagesOf } from './stages.ts';
import { taskHours } from './work.ts';

const keepsAnother = compile(is('which-lathe', 'spare-lathe'));

/** Another lathe stays in working order while this one is apart. */
export const hasOtherLathe = (state: State): boolean => keepsAnother(state);

/** The tasks of a path, in order and in stages. */
export function planOf(state: State): { order: readonly string[]; stages: readonly StagePlan[] } {
  const wanted = taskHours(state);
  const before = prerequisites(new Set(wanted.map(({ task }) => task.id)), state);
  const order = orderOf(before);
  const byId = new Map(wanted.map((each) => [each.task.id, each]));
  const planned = order.map((id): PlannedTask => {
    const { task, hours, because } = byId.get(id)!;
    const { extra: _extra, scale: _scale, when: _when, afterWhen: _afterWhen, ...shown } = task;
    return { ...shown, hours, because, after: before.get(id)! };
  });
  return { order, stages: stagesOf(planned, hasOtherLathe(state)) };
}
