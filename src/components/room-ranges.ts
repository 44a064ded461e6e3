import type { SubsystemId } from '../calc/core/decision.ts';
import type { Path } from '../calc/core/path.ts';
import { resolve } from '../calc/cost/builds.ts';
import { addTerms } from '../calc/cost/columns.ts';
import { editionOf } from '../calc/cost/edition.ts';
import { spreadOf } from '../calc/cost/spread.ts';
import { BUILDS } from '../calc/cost/strata.ts';
import { planState } from '../calc/cost/ways.ts';
import { machineOf } from '../calc/facts.ts';
import { parts } from '../calc/trade.ts';
import { currentEdition } from '../content/edition.ts';
import { middleHalf, moneyRange } from '../islands/shared/format.ts';

/**
 * What half of the ways cost in one room, before freight and trouble: "$280–540". The parts of every other room count as
 * owned. For pages that are worked out when the site is built.
 */
export function roomRange(path: Path, room: SubsystemId): string {
  const elsewhere = parts.filter(({ subsystem }) => subsystem !== room).map(({ id }) => id);
  const alone = { ...path, owned: [...new Set([...path.owned, ...elsewhere])] };
  const machine = machineOf(path.size, path.facts);
  const { goods, local } = resolve(
    planState(alone, machine).state,
    machine,
    alone,
    editionOf(currentEdition),
  );
  if (goods.length + local.length === 0) return 'nothing to buy';
  const column = new Float64Array(BUILDS);
  addTerms(column, [...goods, ...local]);
  const { from, to } = middleHalf(spreadOf(column, 100).twenty);
  return moneyRange(from, to);
}
