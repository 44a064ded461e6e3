import { decisionPosition, type State } from '../../choices/state.ts';
import { type Condition, decisionsIn } from '../../core/condition.ts';
import { wholeCents } from '../../cost/amounts.ts';
import { conditionsOfPart } from '../../cost/bill.ts';
import { allowanceOf, strikesWhileOut } from '../../cost/builds.ts';
import type { Column } from '../../cost/edition.ts';
import { conditionsOfRisk } from '../../cost/risks.ts';
import { BUILDS } from '../../cost/strata.ts';
import { conditionsOfTask, workAt } from '../../schedule/work.ts';
import { parts, risks, tasks } from '../../trade.ts';
import { strikesAt, unitsAt } from '../counting.ts';
import { groundsOfRisk, measured, readsOf } from '../looks-at.ts';
import { countingOf, type Present } from '../present.ts';
import type { Space } from './space.ts';

/** Something that adds to the totals, as often as the answers it looks at say. */
export interface Term {
  readonly kind: 'goods' | 'plain' | 'work' | 'risk-money' | 'risk-hours';
  readonly id: string;
  /** Column of one, at or above zero; for a risk its position. */
  readonly column: Column | undefined;
  readonly risk: number;
  /** It counts while the lathe cannot be used. */
  readonly out: boolean;
  /** Variables it looks at. */
  readonly scope: readonly number[];
  /** How often it counts (below zero: a credit), or in how many builds the risk strikes. */
  readonly times: (state: State) => number;
}

const scopeOf = (space: Space, conditions: readonly Condition[]): number[] => {
  const seen = conditions.flatMap(decisionsIn).map((id) => space.variableAt[decisionPosition(id)]!);
  return [...new Set(seen)].filter((index) => index >= 0);
};

/** What a figure of the design decides on that may still change: bounded by nothing, and exact in the end. */
interface Varying {
  readonly parts: ReadonlySet<number>;
  readonly tasks: ReadonlySet<number>;
  readonly risks: ReadonlySet<number>;
  readonly ownRisks: ReadonlySet<number>;
}

function varyingIn(space: Space, state: State): Varying {
  const moved = measured.filter(({ measure }) =>
    [...readsOf(measure, state)].some((at) => space.variableAt[at] !== -1),
  );
  const all = (of: keyof Varying): Set<number> => new Set(moved.flatMap((each) => each[of]));
  return { parts: all('parts'), tasks: all('tasks'), risks: all('risks'), ownRisks: all('ownRisks') };
}

/** A part that is neither owned, nor paid every year, nor quoted or bought already. */
const isPriced = ({ planned, orders }: Present, at: number): boolean =>
  parts[at]!.yearly !== true && !orders.has(at) && !planned.path.owned.includes(parts[at]!.id);

/** Parts at their bands. Those that a figure of the design decides on, and those bought, are bounded by nothing. */
function partTerms(present: Present, space: Space, varying: Varying): Term[] {
  const { edition, machine } = present;
  const prices = edition.prices(machine.size);
  return parts.flatMap((part, at): Term[] => {
    if (!isPriced(present, at) || varying.parts.has(at)) return [];
    const plain = part.credit === true || edition.local[at]!;
    const sign = part.credit ? -1 : 1;
    return [
      {
        kind: plain ? 'plain' : 'goods',
        id: `p${at}`,
        column: prices[at]!,
        risk: -1,
        out: false,
        scope: scopeOf(space, conditionsOfPart[at]!),
        times: (state) => sign * unitsAt(at, countingOf(present, state)),
      },
    ];
  });
}

function taskTerms({ edition }: Present, space: Space, varying: Varying): Term[] {
  return tasks.flatMap((task, at): Term[] => {
    if (varying.tasks.has(at)) return [];
    const scope = scopeOf(space, conditionsOfTask[at]!);
    const common = { kind: 'work' as const, risk: -1, out: task.lathe === 'out', scope };
    const extras = (task.extra ?? []).map(({ id }) => ({
      ...common,
      id: `x${id}`,
      column: edition.extras.get(id)!,
      times: (state: State) => {
        const { extras, timesExtra } = workAt(at, state);
        return extras.includes(id) ? timesExtra : 0;
      },
    }));
    return [
      { ...common, id: `t${at}`, column: edition.hours[at]!, times: (state) => workAt(at, state).times },
      ...extras,
    ];
  });
}

/** Hours of a risk, and its money where no spare and no flat allowance pays for it. */
function riskTerms(present: Present, space: Space, varying: Varying): Term[] {
  const flat = allowanceOf(present.planned.path) !== undefined;
  return risks.flatMap((_, at): Term[] => {
    const common = { column: undefined, risk: at, out: strikesWhileOut[at]! };
    const strikes = (state: State) => strikesAt(at, countingOf(present, state));
    const hours: Term = {
      ...common,
      kind: 'risk-hours',
      id: `rh${at}`,
      scope: scopeOf(space, conditionsOfRisk[at]!),
      times: (state) => strikes(state).builds,
    };
    const money: Term = {
      ...common,
      kind: 'risk-money',
      id: `rm${at}`,
      scope: scopeOf(space, groundsOfRisk[at]!),
      times: (state) => strikes(state).paid,
    };
    if (varying.ownRisks.has(at)) return [];
    return flat || varying.risks.has(at) ? [hours] : [hours, money];
  });
}

/** What old parts are sold for or offered at comes off any total at most once: every bound allows for it. */
function soldTerm({ orders }: Present): Term[] {
  const cents = [...orders].reduce(
    (sum, [at, { goods }]) => (parts[at]!.credit && goods ? sum + wholeCents(goods) : sum),
    0,
  );
  if (cents === 0) return [];
  const column = new Float64Array(BUILDS).fill(1);
  return [{ kind: 'plain', id: 'sold', column, risk: -1, out: false, scope: [], times: () => -cents }];
}

/** Everything that can add to the totals of a path. */
export function termsOf(present: Present, space: Space, state: State): Term[] {
  const varying = varyingIn(space, state);
  return [
    ...partTerms(present, space, varying),
    ...taskTerms(present, space, varying),
    ...riskTerms(present, space, varying),
    ...soldTerm(present),
  ];
}
