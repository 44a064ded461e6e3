import { type Band, NOTHING, scaleBand } from '../core/band.ts';
import type { StageId } from '../core/task.ts';
import type { Column } from '../cost/edition.ts';
import { sumOf } from '../cost/exact-sums.ts';
import { spreadOf } from '../cost/spread.ts';
import { BUILDS } from '../cost/strata.ts';
import type { BillLine, Spread } from '../report.ts';
import { hasOtherLathe } from './plan.ts';
import type { PreparedPath } from './prepared-ways.ts';
import { nameOfStage, stageNames } from './stages.ts';
import { BESIDE_THE_PLAN, stageOfDelivery, type Tally } from './tally.ts';
import type { Watched, When } from './watch.ts';

const CENTS = 100;

/** A stage on the calendar, with what it takes. */
export interface StageRow extends When {
  readonly id: StageId;
  readonly name: string;
  /** Hours with trouble, and dollars with freight, tax, duty and trouble: the stages of a build add up to its total. */
  readonly hours: Spread;
  readonly money: Spread;
  /** Lines of the bill that its tasks need first, dollars before freight; credits taken off. */
  readonly lines: Band;
  readonly parts: readonly string[];
}

const signed = (line: BillLine): Band => (line.credit ? scaleBand(line.line, -1) : line.line);

/** Over the tasks of a stage, the earliest or the latest column. */
function edge(columns: readonly Column[], pick: (a: number, b: number) => number): Column {
  const found = columns[0]!.slice();
  for (const column of columns)
    for (let build = 0; build < BUILDS; build += 1) found[build] = pick(found[build]!, column[build]!);
  return found;
}

/** The stages of the plan in the order of the trade, and the total of their lines. */
export function stageRows(
  { own: prepared, state, lines: once }: PreparedPath,
  seen: Watched,
  tally: Tally,
  firstDay: string | undefined,
): { rows: StageRow[]; lines: Band } {
  const stageOf = new Map(
    prepared.network.deliveries.map(({ part }, number) => [part, stageOfDelivery(prepared, number)]),
  );
  const rows = stageNames.flatMap(({ id }) => {
    const places = prepared.network.tasks.flatMap((task, at) => (task.stage === id ? [at] : []));
    if (places.length === 0) return [];
    const own = once.filter((line) => (stageOf.get(line.part) ?? BESIDE_THE_PLAN) === id);
    const start = edge(
      places.map((at) => seen.start[at]!),
      Math.min,
    );
    const finish = edge(
      places.map((at) => seen.finish[at]!),
      Math.max,
    );
    return [
      {
        id,
        name: nameOfStage(id, hasOtherLathe(state)),
        ...seen.when(start, finish, firstDay),
        hours: spreadOf(tally.stageHours.get(id)!, 1),
        money: spreadOf(tally.stageCents.get(id)!, CENTS),
        lines: sumOf(own.map(signed)),
        parts: own.map((line) => line.part),
      },
    ];
  });
  return { rows, lines: once.length === 0 ? NOTHING : sumOf(once.map(signed)) };
}
