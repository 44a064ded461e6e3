import { decisionPosition, type State } from '../choices/state.ts';
import { type Condition, decisionsIn, walk } from '../core/condition.ts';
import { conditionsOfPart } from '../cost/bill.ts';
import { conditionsOfRisk } from '../cost/risks.ts';
import { designOf } from '../design.ts';
import { decisions } from '../guide.ts';
import { conditionsOfTask } from '../schedule/work.ts';

/** By position of a question: positions of what has to be looked at again when its answer changes. */
type ByQuestion = readonly (readonly number[])[];

function byQuestion(conditions: readonly (readonly Condition[])[]): ByQuestion {
  const looking: number[][] = decisions.map(() => []);
  for (const [at, each] of conditions.entries()) {
    for (const id of new Set(each.flatMap(decisionsIn))) looking[decisionPosition(id)]!.push(at);
  }
  return looking;
}

export const partsLookingAt = byQuestion(conditionsOfPart);
export const tasksLookingAt = byQuestion(conditionsOfTask);
export const risksLookingAt = byQuestion(conditionsOfRisk);

/** A worked-out figure that decides on a part, a task or a risk, with the positions that it decides on. */
interface Measured {
  readonly measure: string;
  readonly parts: readonly number[];
  readonly tasks: readonly number[];
  readonly risks: readonly number[];
}

const measuresIn = (conditions: readonly Condition[]): string[] =>
  conditions.flatMap(walk).flatMap((each) => (each.kind === 'measure' ? [each.measure] : []));

const deciding = (conditions: readonly (readonly Condition[])[], measure: string): number[] =>
  conditions.flatMap((each, at) => (measuresIn(each).includes(measure) ? [at] : []));

const everyCondition = [...conditionsOfPart, ...conditionsOfTask, ...conditionsOfRisk].flat();

export const measured: readonly Measured[] = [...new Set(measuresIn(everyCondition))].map((measure) => ({
  measure,
  parts: deciding(conditionsOfPart, measure),
  tasks: deciding(conditionsOfTask, measure),
  risks: deciding(conditionsOfRisk, measure),
}));

/** Positions of the questions that a worked-out figure looked at on the way to its value; no other can move it. */
export function readsOf(measure: string, state: State): ReadonlySet<number> {
  const read = new Set<number>();
  designOf(state, (decision) => read.add(decisionPosition(decision))).figure(measure);
  return read;
}
