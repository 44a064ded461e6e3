// Going through every legal path one by one: what a search is compared with.

import { checksOf } from '../../../src/calc/checks.ts';
import { isViolated } from '../../../src/calc/choices/exclusions.ts';
import type { State } from '../../../src/calc/choices/state.ts';
import { unchosen } from '../../../src/calc/choices/state.ts';
import type { Check } from '../../../src/calc/core/check.ts';
import type { Look } from '../../../src/calc/core/figure.ts';
import { figure } from '../../../src/calc/core/machine.ts';
import type { Path } from '../../../src/calc/core/path.ts';
import { fillTotals, newTotals, resolve } from '../../../src/calc/cost/builds.ts';
import { quantile, sortColumn } from '../../../src/calc/cost/columns.ts';
import { designOf } from '../../../src/calc/design.ts';
import { decisions } from '../../../src/calc/guide.ts';
import { measure } from '../../../src/calc/measures.ts';
import { presentOf } from '../../../src/calc/paths/present.ts';
import type { WayFigures } from '../../../src/calc/paths/search/figures.ts';
import {
  castingTasks,
  countedMargin,
  ENOUGH,
  type Limit,
  marginChecks,
} from '../../../src/calc/paths/search/limits.ts';
import { candidates, spaceOf } from '../../../src/calc/paths/search/space.ts';
import { pathFor } from '../../../src/calc/paths/search/task.ts';
import { taskHours } from '../../../src/calc/schedule/work.ts';
import { currentEdition } from '../../../src/content/edition.ts';

export interface Judged {
  readonly figures: WayFigures;
  readonly kept: boolean;
}

const option = (state: State, id: string): string[] => {
  const at = decisions.findIndex((decision) => decision.id === id);
  return decisions[at]!.options.filter((_, bit) => (state.masks[at]! >> bit) & 1).map((each) => each.id);
};

/** Whether a settled state keeps a limit, said in another way than the search says it. */
function keeps(state: State, limit: Limit, f: WayFigures, look: Look, checks: readonly Check[]): boolean {
  const planned = taskHours(state).map(({ task }) => task);
  switch (limit.kind) {
    case 'money':
      return f.moneyP80 <= limit.most;
    case 'hours':
      return f.hoursP80 <= limit.most;
    case 'weeks':
      return f.weeksP80 <= limit.most;
    case 'skill':
      return decisions.every((decision) =>
        decision.options.every(
          ({ id, skill }) => skill <= limit.most || !option(state, decision.id).includes(id),
        ),
      );
    case 'reversible':
      return planned.every(({ undo }) => undo !== 'cannot-be-undone');
    case 'whole-castings':
      return planned.every(({ id }) => !castingTasks.includes(id));
    case 'hand-use':
      return option(state, 'hand-use').some((id) => id !== 'no-hand-use');
    case 'threads':
      return (
        option(state, 'spindle-sensor').some((id) => id !== 'no-sensor') &&
        !option(state, 'driven-axes').includes('cross-slide-only')
      );
    case 'drill':
      return (
        option(state, 'holes').some((id) => id !== 'tailstock-by-hand') &&
        checks.every(({ id, result }) => id !== 'drilling-thrust' || result !== 'stop')
      );
    case 'play': {
      const play = look.figure('cross-play-on-diameter');
      return play !== undefined && play.value <= limit.most;
    }
    case 'checks':
      return checks.every(({ result }) => result !== 'stop');
  }
}

/** Every legal path of a space with its figures, and whether it keeps the limits. */
export function everyWay(asked: Path, free: readonly string[], limits: readonly Limit[]): Judged[] {
  const path = pathFor(asked, limits);
  const present = presentOf(path, currentEdition);
  const space = spaceOf(present, free);
  const state = unchosen(present.planned.state, measure);
  state.masks.set(present.planned.state.masks);
  const found: Judged[] = [];
  const judge = (): void => {
    const totals = newTotals();
    fillTotals(totals, resolve(state, present.machine, path, present.edition), present.edition);
    const perWeek = 100 * figure(present.machine, 'hours-per-week');
    const [money, hours, out] = [
      sortColumn(totals.money),
      sortColumn(totals.hours),
      sortColumn(totals.hoursOut),
    ];
    const look = designOf(state);
    const checks = checksOf(look);
    const margins = checks.flatMap(({ id, margin }) =>
      marginChecks.includes(id) && margin !== undefined ? [countedMargin(margin)] : [],
    );
    const figures = {
      money: quantile(money, 0.5) / 100,
      moneyP80: quantile(money, 0.8) / 100,
      hours: quantile(hours, 0.5) / 100,
      hoursP80: quantile(hours, 0.8) / 100,
      weeksP80: quantile(out, 0.8) / perWeek,
      margin: Math.min(ENOUGH, ...margins),
    };
    found.push({ figures, kept: limits.every((limit) => keeps(state, limit, figures, look, checks)) });
  };
  const go = (index: number): void => {
    const variable = space.variables[index];
    if (!variable) {
      if (!space.exclusions.some((exclusion) => isViolated(exclusion, state))) judge();
      return;
    }
    for (const mask of candidates(space, variable, state)) {
      state.masks[variable.at] = mask;
      go(index + 1);
    }
  };
  for (const { at } of space.variables) state.masks[at] = 0;
  go(0);
  return found;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** Figures as text, to compare sets of them. */
export const written = ({ money, hours, margin }: WayFigures): string =>
  `${money.toFixed(4)} ${hours.toFixed(4)} ${margin.toFixed(2)}`;

/** Those that no other beats, by comparing all with all; ways alike in all three once. */
export function unbeaten(ways: readonly WayFigures[]): WayFigures[] {
  const atLeast = (a: WayFigures, b: WayFigures): boolean =>
    a.money <= b.money + 1e-6 && a.hours <= b.hours + 1e-6 && a.margin >= b.margin;
  const alike = (a: WayFigures, b: WayFigures): boolean =>
    same(a.money, b.money) && same(a.hours, b.hours) && a.margin === b.margin;
  const left: WayFigures[] = [];
  for (const way of [...ways].sort((a, b) => a.money - b.money || a.hours - b.hours || b.margin - a.margin)) {
    if (!left.some((other) => atLeast(other, way) || alike(other, way))) left.push(way);
  }
  return left.filter((way) => !left.some((other) => other !== way && atLeast(other, way)));
}
