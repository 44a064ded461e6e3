import { checksOf } from './checks.ts';
import type { Status } from './choices/choose.ts';
import type { State } from './choices/state.ts';
import { choiceViews, roomViews } from './choices/views.ts';
import { addBands, NOTHING } from './core/band.ts';
import type { Machine } from './core/machine.ts';
import { figure } from './core/machine.ts';
import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import { allowanceOf, type Totals } from './cost/builds.ts';
import { type Edition, editionOf } from './cost/edition.ts';
import { gradeOf } from './cost/grade.ts';
import { landedOf } from './cost/landed.ts';
import { billLines } from './cost/lines.ts';
import { type Orders, ordersOf } from './cost/orders.ts';
import { yearlyBand } from './cost/parts-of-total.ts';
import { reportMoney } from './cost/report-money.ts';
import { riskRows } from './cost/risk-rows.ts';
import { sellerRows } from './cost/seller-rows.ts';
import { shopOrders } from './cost/shop-orders.ts';
import { mean, spreadOf } from './cost/spread.ts';
import { totalsOf } from './cost/totals.ts';
import { wantedOf } from './cost/wanted.ts';
import { planState, waysOf } from './cost/ways.ts';
import { machineOf } from './facts.ts';
import { findingsOf } from './findings.ts';
import { keptDesignOf } from './measures.ts';
import type { BillLine, Report } from './report.ts';
import { calendarOf } from './schedule/order-by.ts';
import { planOf } from './schedule/plan.ts';
import { settingsOf } from './settings.ts';
import { parts } from './trade.ts';
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
  const wanted = wantedOf(plan.state, machine, book);
  const orders = ordersOf(wanted, path, edition);
  const ways = waysOf(path, plan, book.seed);
  const totals = totalsOf(ways, machine, path, edition, orders);
  const schedule = planOf(plan.state);
  const calendar = calendarOf(schedule.stages, figure(machine, 'hours-per-week'), path.start);
  const lines = billLines({ state: plan.state, machine, path, book, calendar, wanted }, orders);
  return {
    path,
    edition: { id: book.edition, date: book.date, basis: book.basis },
    machine,
    ...said(plan, path),
    bill: { once: lines.filter((line) => !line.yearly), perYear: lines.filter((line) => line.yearly) },
    stages: schedule.stages,
    order: schedule.order,
    risks: riskRows(plan.state, path, edition, wanted),
    ...moneyOf(totals, lines, plan, path, edition, orders),
    yearly: yearlyBand(lines),
    ...timeOf(totals, machine, schedule),
    waysOfAnswering: ways.length,
  };
}

/** Money, the orders by shop, and how far the estimate is defined. */
function moneyOf(
  totals: Totals,
  lines: readonly BillLine[],
  { state, status }: { state: State; status: Status[] },
  path: Path,
  edition: Edition,
  orders: Orders,
): Pick<Report, 'money' | 'sellers' | 'grade'> {
  const { landedBand } = landedOf(state, path, edition);
  const belongs = new Set(lines.filter(({ qty, owned }) => qty > 0 && !owned).map(({ part }) => part));
  const sellers = sellerRows(
    shopOrders(orders, (at) => belongs.has(parts[at]!.id), state, path, edition.book),
    landedBand,
    edition.book,
  );
  const money = reportMoney(totals, lines, sellers, landedBand, allowanceOf(path));
  return { money, sellers, grade: gradeOf(money, lines, status) };
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
