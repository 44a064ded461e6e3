import { decisionPosition, type State } from '../choices/state.ts';
import { type Condition, decisionsIn, walk } from '../core/condition.ts';
import { conditionsOfPart, figuresOfPart } from '../cost/bill.ts';
import { conditionsOfRisk, sparePlaces } from '../cost/risks.ts';
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

/** What decides on a risk: its own conditions, and those of the parts whose spare would pay for it. */
export const groundsOfRisk: readonly (readonly Condition[])[] = conditionsOfRisk.map((own, at) => [
  ...own,
  ...sparePlaces[at]!.flatMap((part) => conditionsOfPart[part]!),
]);

export const partsLookingAt = byQuestion(conditionsOfPart);
export const tasksLookingAt = byQuestion(conditionsOfTask);
export const risksLookingAt = byQuestion(groundsOfRisk);

/** A worked-out figure that decides on a part, a task or a risk, with the positions that it decides on. */
interface Measured {
  readonly measure: string;
  readonly parts: readonly number[];
  readonly tasks: readonly number[];
  readonly risks: readonly number[];
  /** Of the risks, those whose own conditions ask for it: the others only have a spare that it decides on. */
  readonly ownRisks: readonly number[];
}

const measuresIn = (conditions: readonly Condition[]): string[] =>
  conditions.flatMap(walk).flatMap((each) => (each.kind === 'measure' ? [each.measure] : []));

const measuresOfPart = conditionsOfPart.map((each, at) => [...measuresIn(each), ...figuresOfPart[at]!]);
const measuresOfTask = conditionsOfTask.map(measuresIn);
const measuresOfSpares = sparePlaces.map((places) => places.flatMap((part) => measuresOfPart[part]!));
const measuresOfRisk = conditionsOfRisk.map((each, at) => [...measuresIn(each), ...measuresOfSpares[at]!]);

const deciding = (measures: readonly (readonly string[])[], measure: string): number[] =>
  measures.flatMap((each, at) => (each.includes(measure) ? [at] : []));

const everyMeasure = [...measuresOfPart, ...measuresOfTask, ...measuresOfRisk].flat();

export const measured: readonly Measured[] = [...new Set(everyMeasure)].map((measure) => ({
  measure,
  parts: deciding(measuresOfPart, measure),
  tasks: deciding(measuresOfTask, measure),
  risks: deciding(measuresOfRisk, measure),
  ownRisks: deciding(conditionsOfRisk.map(measuresIn), measure),
}));

/** Positions of the questions that a worked-out figure looked at on the way to its value; no other can move it. */
export function readsOf(measure: string, state: State): ReadonlySet<number> {
  const read = new Set<number>();
  designOf(state, (decision) => read.add(decisionPosition(decision))).figure(measure);
  return read;
}
