import { decisionPosition, type State } from '../../choices/state.ts';
import { type Condition, decisionsIn } from '../../core/condition.ts';
import { conditionsOfPart, quantityAt } from '../../cost/bill.ts';
import { strikesWhileOut } from '../../cost/builds.ts';
import type { Column } from '../../cost/edition.ts';
import { conditionsOfRisk } from '../../cost/risks.ts';
import { conditionsOfTask, workAt } from '../../schedule/work.ts';
import { parts, risks, tasks } from '../../trade.ts';
import { measured } from '../looks-at.ts';
import { type Present, strikesOf } from '../present.ts';
import type { Space } from './space.ts';

/** Something that adds to the totals, as often as the answers it looks at say. */
export interface Term {
  readonly kind: 'goods' | 'plain' | 'work' | 'risk';
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

/** Parts that a worked-out figure decides on: they are bounded by nothing and priced at the end. */
export const measuredParts: readonly number[] = measured.flatMap((each) => each.parts);

const isPaid = ({ planned }: Present, at: number): boolean =>
  parts[at]!.yearly !== true && !planned.path.owned.includes(parts[at]!.id);

function partTerms(present: Present, space: Space): Term[] {
  const { edition, machine } = present;
  const prices = edition.prices(machine.size);
  return parts.flatMap((part, at): Term[] => {
    if (!isPaid(present, at) || measuredParts.includes(at)) return [];
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
        times: (state) => sign * quantityAt(at, state, machine),
      },
    ];
  });
}

function taskTerms({ edition }: Present, space: Space): Term[] {
  return tasks.flatMap((task, at): Term[] => {
    const scope = scopeOf(space, conditionsOfTask[at]!);
    const common = { kind: 'work' as const, risk: -1, out: task.lathe === 'out', scope };
    const extras = (task.extra ?? []).map(({ id }) => ({
      ...common,
      id: `x${id}`,
      column: edition.extras.get(id)!,
      times: (state: State) => Number(workAt(at, state).extras.includes(id)),
    }));
    return [
      { ...common, id: `t${at}`, column: edition.hours[at]!, times: (state) => workAt(at, state).times },
      ...extras,
    ];
  });
}

const riskTerms = (space: Space): Term[] =>
  risks.map((_, at) => ({
    kind: 'risk' as const,
    id: `r${at}`,
    column: undefined,
    risk: at,
    out: strikesWhileOut[at]!,
    scope: scopeOf(space, conditionsOfRisk[at]!),
    times: (state) => strikesOf(at, state),
  }));

/** Everything that can add to the totals of a path. */
export const termsOf = (present: Present, space: Space): Term[] => [
  ...partTerms(present, space),
  ...taskTerms(present, space),
  ...riskTerms(space),
];
