import { checksOf } from '../checks.ts';
import { blocksOf } from '../choices/blocks.ts';
import { optionsOf } from '../choices/state.ts';
import type { Check, Result } from '../core/check.ts';
import type { Answer } from '../core/path.ts';
import { countedChance } from '../cost/risks.ts';
import { designOf } from '../design.ts';
import { decisions } from '../guide.ts';
import { taskHours } from '../schedule/work.ts';
import { risks } from '../trade.ts';
import type { Planned } from './one-change.ts';

/** A risk that moves by one of twenty or more; chances as builds of twenty. */
export interface MovedRisk {
  readonly risk: string;
  readonly name: string;
  readonly before: number;
  readonly after: number;
  readonly injury: boolean;
}

/** A check that appears, vanishes or says something else. */
export interface MovedCheck {
  readonly check: string;
  readonly label: string;
  readonly before: Result | 'gone';
  readonly after: Result | 'gone';
}

export interface OptionOf {
  readonly decision: string;
  readonly option: string;
}

/** What else moves between two plans. Plain data. */
export interface Moved {
  readonly risks: readonly MovedRisk[];
  readonly checks: readonly MovedCheck[];
  /** Questions that arise, and questions that no longer do. */
  readonly opens: readonly string[];
  readonly closes: readonly string[];
  /** Options of other questions that can no longer be taken, and that can be taken again. */
  readonly blocks: readonly OptionOf[];
  readonly frees: readonly OptionOf[];
  /** Other planned answers that change with it. */
  readonly forces: readonly { readonly decision: string; readonly before: Answer; readonly after: Answer }[];
  /** Work that cannot be undone and was not in the plan before. */
  readonly irreversible: readonly { readonly task: string; readonly name: string }[];
}

/** What of a plan the moves are told from; made once for the present plan. */
export interface Told {
  readonly planned: Planned;
  readonly chances: readonly number[];
  readonly checks: ReadonlyMap<string, Check>;
  readonly blocked: ReadonlySet<string>;
  readonly final: ReadonlyMap<string, string>;
}

export function toldOf(planned: Planned): Told {
  const { path, state, status } = planned;
  const blocked = decisions.flatMap(({ id }, at) =>
    blocksOf(state, status, at).map(({ option }) => `${id} ${option}`),
  );
  const final = taskHours(state).filter(({ task }) => task.undo === 'cannot-be-undone');
  return {
    planned,
    chances: risks.map((_, at) => countedChance(at, state, path.chances)),
    checks: new Map(checksOf(designOf(state)).map((check) => [check.id, check])),
    blocked: new Set(blocked),
    final: new Map(final.map(({ task }) => [task.id, task.name])),
  };
}

/** Half a hundredth forgives rounding in products of levers. */
const ONE_OF_TWENTY = 0.05 - 1e-9;
const ofTwenty = (chance: number): number => Math.round(chance * 200) / 10;

const risksMoved = (a: Told, b: Told): MovedRisk[] =>
  risks.flatMap(({ id, name, injury }, at) => {
    const before = a.chances[at]!;
    const after = b.chances[at]!;
    if (Math.abs(after - before) < ONE_OF_TWENTY) return [];
    return [{ risk: id, name, before: ofTwenty(before), after: ofTwenty(after), injury: injury === true }];
  });

function checksMoved(a: Told, b: Told): MovedCheck[] {
  const ids = new Set([...a.checks.keys(), ...b.checks.keys()]);
  return [...ids].flatMap((check) => {
    const before = a.checks.get(check)?.result ?? 'gone';
    const after = b.checks.get(check)?.result ?? 'gone';
    const { label } = (b.checks.get(check) ?? a.checks.get(check))!;
    return before === after ? [] : [{ check, label, before, after }];
  });
}

/** Options in one set and not in the other, of questions that are asked on both plans. */
const onlyIn = (
  here: ReadonlySet<string>,
  there: ReadonlySet<string>,
  asked: (id: string) => boolean,
): OptionOf[] =>
  [...here].flatMap((each) => {
    const [decision, option] = each.split(' ') as [string, string];
    return there.has(each) || !asked(decision) ? [] : [{ decision, option }];
  });

/** What moves from one plan to another. `answered` are the questions that were answered: their own change is no move. */
export function movedBetween(a: Told, b: Told, answered: readonly string[]): Moved {
  const from = a.planned.state.masks;
  const to = b.planned.state.masks;
  const others = decisions.flatMap(({ id }, at) => (answered.includes(id) ? [] : [{ id, at }]));
  const askedTwice = new Set(others.filter(({ at }) => from[at] !== 0 && to[at] !== 0).map(({ id }) => id));
  return {
    risks: risksMoved(a, b),
    checks: checksMoved(a, b),
    opens: others.filter(({ at }) => from[at] === 0 && to[at] !== 0).map(({ id }) => id),
    closes: others.filter(({ at }) => from[at] !== 0 && to[at] === 0).map(({ id }) => id),
    blocks: onlyIn(b.blocked, a.blocked, (id) => askedTwice.has(id)),
    frees: onlyIn(a.blocked, b.blocked, (id) => askedTwice.has(id)),
    forces: others
      .filter(({ id, at }) => askedTwice.has(id) && from[at] !== to[at])
      .map(({ id, at }) => ({
        decision: id,
        before: optionsOf(at, from[at]!),
        after: optionsOf(at, to[at]!),
      })),
    irreversible: [...b.final].flatMap(([task, name]) => (a.final.has(task) ? [] : [{ task, name }])),
  };
}
