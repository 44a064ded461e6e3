import type { State } from '../choices/state.ts';
import type { Progress } from '../core/progress.ts';
import { type Judgement, judge, judgeAll, type Pointer, type Reading } from '../core/reading.ts';
import type { RiskRow } from '../report.ts';
import { readingById, readingsOf } from './readings.ts';

/** A reading with what has been written down. Plain data. */
export interface MeasuredReading extends Omit<Reading, 'when' | 'points'> {
  readonly values: readonly number[];
  /** One for each value, and the worst of them; missing while nothing is written down. */
  readonly judged: readonly Judgement[];
  readonly worst?: Judgement;
  /** Where a value outside its limit points: only tasks and risks of this plan. */
  readonly points?: Pointer;
}

function measured(
  { when: _, points, ...reading }: Reading,
  values: readonly number[],
  inPlan: ReadonlySet<string>,
  risks: ReadonlySet<string>,
): MeasuredReading {
  const worst = judgeAll({ ...reading, points }, values);
  const shown = { ...reading, values, judged: values.map((value) => judge({ ...reading, points }, value)) };
  if (worst === undefined) return shown;
  if (worst !== 'outside') return { ...shown, worst };
  return {
    ...shown,
    worst,
    points: {
      say: points.say,
      tasks: points.tasks.filter((id) => inPlan.has(id)),
      risks: points.risks.filter((id) => risks.has(id)),
    },
  };
}

/** Everything that is measured on this path, in the order of its tasks, with values, judgement and pointers. */
export function measuredOf(
  state: State,
  order: readonly string[],
  risks: readonly Pick<RiskRow, 'id'>[],
  progress: Progress,
): MeasuredReading[] {
  const inPlan = new Set(order);
  const known = new Set(risks.map((risk) => risk.id));
  const place = new Map(order.map((id, at) => [id, at]));
  return readingsOf(state, inPlan)
    .map((reading) => measured(reading, progress.values[reading.id] ?? [], inPlan, known))
    .sort((a, b) => place.get(a.task)! - place.get(b.task)!);
}

/** Values that no reading of this path asks for: kept, and shown apart. */
export const otherValues = (shown: readonly MeasuredReading[], progress: Progress): string[] => {
  const asked = new Set(shown.map((reading) => reading.id));
  return Object.keys(progress.values).filter((id) => !asked.has(id));
};

export const readingName = (id: string): string | undefined => readingById.get(id)?.what;
