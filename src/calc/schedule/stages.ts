import { addBands, NOTHING } from '../core/band.ts';
import type { StageId } from '../core/task.ts';
import type { HoldPoint, PlannedTask, StagePlan, StoppingPoint } from '../report.ts';
import { roundsOf } from './rounds.ts';

export const stageNames: readonly { readonly id: StageId; readonly name: string }[] = [
  { id: 'decide', name: 'Decide' },
  { id: 'design-and-order', name: 'Design and order' },
  { id: 'make-first', name: 'Make first, on this lathe' },
  { id: 'bench-electrics', name: 'Electrics on the bench' },
  { id: 'carriage-stage', name: 'Carriage' },
  { id: 'cross-stage', name: 'Cross slide' },
  { id: 'spindle-stage', name: 'Spindle and its sensor' },
  { id: 'machine-wiring', name: 'Wire the machine' },
  { id: 'commission', name: 'Commission' },
  { id: 'prove', name: 'Prove and learn' },
];

/** With another lathe the parts need not be made on this one. */
export const nameOfStage = (stage: StageId, otherLathe: boolean): string =>
  stage === 'make-first' && otherLathe ? 'Make the parts' : stageNames.find(({ id }) => id === stage)!.name;

const stops: readonly StoppingPoint[] = [
  {
    id: 'stop-decided',
    after: 'decide',
    say: 'a survey of your lathe and a list of the jobs it should do. Nothing is bought but what measuring takes.',
  },
  {
    id: 'stop-bench',
    after: 'bench-electrics',
    say: 'electrics on the bench that turn the motors, with the lathe untouched. Nearly all of it can be sold again.',
  },
  {
    id: 'stop-carriage',
    after: 'carriage-stage',
    say: 'a lathe with a powered carriage that stops at a shoulder, the cross slide still by hand. With the spindle sensor fitted it cuts threads. Many people stop here.',
  },
  {
    id: 'stop-both-slides',
    after: 'cross-stage',
    say: 'both slides under power on temporary wiring, the spindle as it was.',
  },
  {
    id: 'stop-commissioned',
    after: 'commission',
    say: 'a complete machine that has not yet proved what it can hold.',
  },
  { id: 'stop-proved', after: 'prove', say: 'a machine proved on test pieces and on one real part.' },
];

const holds: readonly (Omit<HoldPoint, 'tasks'> & { readonly holds: (task: PlannedTask) => boolean })[] = [
  {
    id: 'hold-make-first',
    name: 'Hold point A',
    after: 'make-first',
    say: 'Nothing on the make-first list still needs this lathe. Each part is made, measured and on the shelf, with a spare of what could be spoilt. Do not take the lathe apart before that.',
    holds: (task) => task.lathe === 'cutting',
  },
  {
    id: 'hold-stop-circuit',
    name: 'Hold point B',
    after: 'bench-electrics',
    say: 'The stop circuit has been proved with the control unplugged. Nothing on the machine moves under power before that.',
    holds: (task) => task.id === 'prove-stop-circuit',
  },
  {
    id: 'hold-first-cut',
    name: 'Hold point C',
    after: 'commission',
    say: 'The stop test on the machine, homing and soft limits have passed with the guard shut. No cut before that.',
    holds: (task) => task.id === 'first-power-on-machine' || task.id === 'homing-and-soft-limits',
  },
];

/**
 * The holds that apply to this plan, with the tasks they wait for. The make-first hold falls away with a second lathe, and
 * in stages it asks only for what the first of them needs: the rest is made once the carriage runs.
 */
function holdAfter(
  stage: StageId,
  tasks: readonly PlannedTask[],
  otherLathe: boolean,
): HoldPoint | undefined {
  const hold = holds.find((each) => each.after === stage);
  if (!hold || (hold.id === 'hold-make-first' && otherLathe)) return undefined;
  const first = hold.id === 'hold-make-first' ? roundsOf(tasks)[0]!.tasks : tasks;
  const waitsFor = first.filter(hold.holds).map((task) => task.id);
  const { holds: _, ...shown } = hold;
  return waitsFor.length > 0 ? { ...shown, tasks: waitsFor } : undefined;
}

/** The plan in stages: tasks in order, hours that are the sum of their tasks, holds and stopping points. */
export function stagesOf(ordered: readonly PlannedTask[], otherLathe: boolean): StagePlan[] {
  return stageNames
    .map(({ id }, number): StagePlan => {
      const tasks = ordered.filter((task) => task.stage === id);
      const hold = holdAfter(id, ordered, otherLathe);
      const stop = stops.find((each) => each.after === id);
      return {
        id,
        number,
        name: nameOfStage(id, otherLathe),
        tasks,
        hours: tasks.reduce((sum, task) => addBands(sum, task.hours), NOTHING),
        outOfUse: tasks.some((task) => task.lathe === 'out'),
        ...(hold ? { hold } : {}),
        ...(stop ? { stop } : {}),
      };
    })
    .filter((stage) => stage.tasks.length > 0);
}
