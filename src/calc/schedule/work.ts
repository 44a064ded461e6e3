import { compile, type State, type Test } from '../choices/state.ts';
import { addBands, type Band, scaleBand } from '../core/band.ts';
import type { Condition } from '../core/condition.ts';
import type { Effect } from '../core/rule.ts';
import type { ExtraWork, Task } from '../core/task.ts';
import type { Term } from '../cost/columns.ts';
import type { Edition } from '../cost/edition.ts';
import { rules, taskIndex, tasks } from '../trade.ts';
import { practice, practiceConditions } from './experience.ts';

interface CompiledScaling {
  readonly when: Test;
  readonly by: number;
  readonly why: string;
}

interface CompiledTask {
  readonly task: Task;
  /** The lathe cannot be used meanwhile. */
  readonly out: boolean;
  readonly own: Test;
  readonly added: readonly Test[];
  /** True for tasks that only a rule brings in. */
  readonly onlyByRule: boolean;
  readonly dropped: readonly Test[];
  readonly extras: readonly { readonly extra: ExtraWork; readonly when: Test }[];
  readonly scalings: readonly CompiledScaling[];
}

function addedBy(task: Task): Test[] {
  return rules
    .filter((rule) => rule.then.some((effect) => effect.kind === 'addsTask' && effect.task === task.id))
    .map((rule) => compile(rule.when));
}

function droppedBy(task: Task): Test[] {
  return rules
    .filter((rule) =>
      rule.then.some((effect) => effect.kind === 'dropsTask' && effect.tasks.includes(task.id)),
    )
    .map((rule) => compile(rule.when));
}

const moves = (effect: Effect, task: string): boolean =>
  effect.kind === 'addsTask'
    ? effect.task === task
    : (effect.kind === 'dropsTask' || effect.kind === 'scalesTask') && effect.tasks.includes(task);

function scaledBy(task: Task): CompiledScaling[] {
  const own = (task.scale ?? []).map(({ when, by, why }) => ({ when: compile(when), by, why }));
  const ruled = rules.flatMap((rule) =>
    rule.then.flatMap((effect) =>
      effect.kind === 'scalesTask' && effect.tasks.includes(task.id)
        ? [{ when: compile(rule.when), by: effect.by, why: rule.say }]
        : [],
    ),
  );
  return [...own, ...ruled];
}

const compiled: readonly CompiledTask[] = tasks.map((task) => {
  const added = addedBy(task);
  return {
    task,
    out: task.lathe === 'out',
    own: compile(task.when ?? { kind: 'always' }),
    added,
    onlyByRule: added.length > 0 && task.when === undefined,
    dropped: droppedBy(task),
    extras: (task.extra ?? []).map((extra) => ({ extra, when: compile(extra.when) })),
    scalings: scaledBy(task),
  };
});

/** Whether a task is part of the job; one that a rule brings in has no condition of its own. */
function isInPlan({ own, added, onlyByRule, dropped }: CompiledTask, state: State): boolean {
  if (dropped.some((when) => when(state))) return false;
  return (!onlyByRule && own(state)) || added.some((when) => when(state));
}

function factor({ scalings }: CompiledTask, state: State): number {
  let product = 1;
  for (let at = 0; at < scalings.length; at += 1) if (scalings[at]!.when(state)) product *= scalings[at]!.by;
  return product;
}

/** Every hour of the job: each task's own work times its factors, and the extra work on top; apart while the lathe is out of use. */
export function workOf(state: State, edition: Edition): { work: Term[]; workOut: Term[] } {
  const work: Term[] = [];
  const workOut: Term[] = [];
  const share = practice(state);
  for (let at = 0; at < compiled.length; at += 1) {
    const each = compiled[at]!;
    if (isInPlan(each, state)) addWork(each.out ? workOut : work, at, state, edition, share);
  }
  return { work, workOut };
}

function addWork(list: Term[], at: number, state: State, edition: Edition, share: number): void {
  const each = compiled[at]!;
  list.push({ column: edition.hours[at]!, times: share * factor(each, state) });
  for (const { extra, when } of each.extras) {
    if (when(state)) list.push({ column: edition.extras.get(extra.id)!, times: share });
  }
}

/** The columns that one task of the plan is made of: the same sums as the totals, task by task. */
export function termsOfTask(id: string, state: State, edition: Edition): Term[] {
  const terms: Term[] = [];
  addWork(terms, taskIndex.get(id)!, state, edition, practice(state));
  return terms;
}
/** How often a task's own hours count, and which of its extra work is done; nothing of a task that is not in the plan. */
export function workAt(
  at: number,
  state: State,
): { times: number; extras: readonly string[]; timesExtra: number } {
  const each = compiled[at]!;
  if (!isInPlan(each, state)) return { times: 0, extras: [], timesExtra: 0 };
  const share = practice(state);
  const extras = each.extras.filter(({ when }) => when(state)).map(({ extra }) => extra.id);
  return { times: share * factor(each, state), extras, timesExtra: share };
}

/** Every condition that decides whether a task is in the plan and how long it takes, by position. */
export const conditionsOfTask: readonly (readonly Condition[])[] = tasks.map((task) => [
  ...practiceConditions,
  ...(task.when ? [task.when] : []),
  ...(task.extra ?? []).map(({ when }) => when),
  ...(task.scale ?? []).map(({ when }) => when),
  ...rules.flatMap((rule) => (rule.then.some((effect) => moves(effect, task.id)) ? [rule.when] : [])),
]);

/** A task of the plan with its hours as a band and why they differ from the plain task. */
export interface TaskHours {
  readonly task: Task;
  readonly hours: Band;
  readonly because: readonly string[];
}

/** The tasks of the plan in the order of the trade, with hours as bands: the same sums as the builds. */
export function taskHours(state: State): TaskHours[] {
  const share = practice(state);
  return compiled.flatMap((each) => {
    if (!isInPlan(each, state)) return [];
    const extras = each.extras.filter(({ when }) => when(state)).map(({ extra }) => extra);
    const scalings = each.scalings.filter(({ when }) => when(state));
    const hours = extras.reduce(
      (sum, extra) => addBands(sum, extra.hours),
      scaleBand(each.task.hours, factor(each, state)),
    );
    return [
      {
        task: each.task,
        hours: scaleBand(hours, share),
        because: [...scalings, ...extras].map(({ why }) => why),
      },
    ];
  });
}
