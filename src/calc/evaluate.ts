import { checksOf } from './checks.ts';
import type { Status } from './choices/choose.ts';
import type { State } from './choices/state.ts';
import { choiceViews, roomViews } from './choices/views.ts';
import { addBands, NOTHING } from './core/band.ts';
import type { Machine } from './core/machine.ts';
import { figure } from './core/machine.ts';
import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import { resolve, type Totals } from './cost/builds.ts';
import { editionOf } from './cost/edition.ts';
import { billLines } from './cost/lines.ts';
import { moneyParts, yearlyBand } from './cost/parts-of-total.ts';
import { riskRows } from './cost/risk-rows.ts';
import { mean, spreadOf } from './cost/spread.ts';
import { totalsOf } from './cost/totals.ts';
import { planState, waysOf } from './cost/ways.ts';
import { machineOf } from './facts.ts';
import { findingsOf } from './findings.ts';
import { keptDesignOf } from './measures.ts';
import type { Report } from './report.ts';
import { planOf } from './schedule/plan.ts';
import { settingsOf } from './settings.ts';
import { verdictsOf } from './worth/verdicts.ts';

export type { Difference } from './cost/difference.ts';
export { type WayToClear, waysToClear } from './paths/clearing.ts';
export type * from './report.ts';

/** Cents in a dollar and hundredths in an hour: the columns of the builds are whole hundredths. */
const HUNDREDTHS = 100;
/** Weeks spent waiting for the longest lead time that no other work fills; common practice, no source (2 to 6). */
const WAITING_WEEKS = 4;

/**
 * Everything that follows from a path at the prices of a book: the entrance for screens, exports and the command line.
 * What is worked out only when somebody asks has its own: `waysToClear` here, `whyNumber` in why-number.ts.
 * Same path and same book give the same report on every machine. Throws only on an author's mistake in the trade data
 * or the book; whatever an owner says is answered with a report.
 */
export function evaluate(path: Path, book: PriceBook): Report {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const plan = planState(path, machine);
  const ways = waysOf(path, plan, book.seed);
  const totals = totalsOf(ways, machine, path, edition);
  const schedule = planOf(plan.state);
  const lines = billLines(plan.state, machine, path, book);
  return {
    path,
    edition: { id: book.edition, date: book.date, basis: book.basis },
    machine,
    ...said(plan, path),
    bill: { once: lines.filter((line) => !line.yearly), perYear: lines.filter((line) => line.yearly) },
    stages: schedule.stages,
    order: schedule.order,
    risks: riskRows(plan.state, edition),
    money: {
      ...spreadOf(totals.money, HUNDREDTHS),
      parts: moneyParts(lines, totals, resolve(plan.state, machine, path, edition).landedBand),
    },
    yearly: yearlyBand(lines),
    ...timeOf(totals, machine, schedule),
    waysOfAnswering: ways.length,
  };
}

/** What is chosen, and what the trade says about it. */
function said(plan: { state: State; status: Status[] }, path: Path) {
  const choices = choiceViews(plan.state, plan.status, path);
  const look = keptDesignOf(plan.state);
  return {
    choices,
    rooms: roomViews(choices),
    verdicts: verdictsOf(plan.state),
    findings: findingsOf(plan.state),
    checks: checksOf(look),
    settings: settingsOf(look),
    openQuestions: choices
      .filter((choice) => choice.status === 'open' || choice.status === 'clash')
      .map((choice) => choice.decision),
  };
}

function timeOf(totals: Totals, machine: Machine, { stages }: Pick<Report, 'stages'>) {
  const perWeek = figure(machine, 'hours-per-week') * HUNDREDTHS;
  const planned = stages.reduce((sum, stage) => addBands(sum, stage.hours), NOTHING);
  const weeks = totals.hours.map((hours) => hours / perWeek + WAITING_WEEKS);
  return {
    hours: {
      ...spreadOf(totals.hours, HUNDREDTHS),
      planned,
      meanTrouble: mean(totals.troubleHours) / HUNDREDTHS,
    },
    weeksOut: spreadOf(totals.hoursOut, perWeek),
    weeksTotal: spreadOf(weeks, 1),
  };
}
