import type { State } from '../choices/state.ts';
import type { Band } from '../core/band.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { workOf } from '../schedule/work.ts';
import { risks, tasks } from '../trade.ts';
import { addOpen } from './charge-columns.ts';
import { addTerms, type Term } from './columns.ts';
import { BESIDE, type Column, type Edition, type RiskColumns } from './edition.ts';
import { type Bought, boughtOf } from './goods.ts';
import { landedOf } from './landed.ts';
import { type Orders, ordersOf } from './orders.ts';
import { countedChance, isCounted, sparesHeld } from './risks.ts';
import { BUILDS } from './strata.ts';
import { type Wanted, wantedOf } from './wanted.ts';

/** The totals of every build: cents and hundredths of an hour. */
export interface Totals {
  readonly goods: Column;
  /** Bought near by: services and used machines, on which no freight, tax or duty is reckoned. */
  readonly local: Column;
  readonly landed: Column;
  readonly credits: Column;
  readonly troubleMoney: Column;
  readonly money: Column;
  readonly hoursOut: Column;
  readonly hours: Column;
  readonly troubleHours: Column;
}

const totalNames = [
  'goods',
  'local',
  'landed',
  'credits',
  'troubleMoney',
  'money',
  'hoursOut',
  'hours',
  'troubleHours',
] as const satisfies readonly (keyof Totals)[];

/** Totals at zero, all in one piece of memory: asking for it once is a good deal quicker than nine times. */
export function newTotals(): Totals {
  const memory = new ArrayBuffer(totalNames.length * BUILDS * Float64Array.BYTES_PER_ELEMENT);
  const column = (at: number): Column =>
    new Float64Array(memory, at * BUILDS * Float64Array.BYTES_PER_ELEMENT, BUILDS);
  return Object.fromEntries(totalNames.map((name, at) => [name, column(at)])) as unknown as Totals;
}

/** A risk, in how many builds it strikes, whether the lathe is out of use then, and whether a spare pays for it already. */
export interface Strike {
  readonly at: number;
  readonly builds: number;
  readonly out: boolean;
  readonly spared: boolean;
}

/** One way of answering, resolved: everything that the sums need. */
export interface Resolved extends Bought {
  readonly work: readonly Term[];
  readonly workOut: readonly Term[];
  readonly risks: readonly Strike[];
  readonly landed: Column;
  readonly landedBand: Band;
  /** A flat share of the goods in the place of the money of the risks. */
  readonly allowance?: number;
}

/** Which columns, how often, for one set of choices; `given`: what was quoted and bought, priced on the plan. */
export function resolve(
  state: State,
  machine: Machine,
  path: Path,
  edition: Edition,
  given?: Orders,
): Resolved {
  const allowance = allowanceOf(path);
  const wanted = wantedOf(state, machine, edition.book);
  const orders = given ?? ordersOf(wanted, path, edition);
  return {
    ...boughtOf(wanted, state, machine, path, edition, orders),
    ...workOf(state, edition),
    risks: strikes(state, path, wanted),
    ...landedOf(state, path, edition),
    ...(allowance === undefined ? {} : { allowance }),
  };
}

/** The flat share set aside for trouble, where the owner gave one that is a share. */
export const allowanceOf = ({ allowance }: Path): number | undefined =>
  allowance !== undefined && Number.isFinite(allowance) && allowance >= 0 ? allowance : undefined;

const outStages = new Set(tasks.filter((task) => task.lathe === 'out').map((task) => task.stage));
/** Risks that strike while the lathe cannot be used, by position. */
export const strikesWhileOut: readonly boolean[] = risks.map((risk) => outStages.has(risk.stage));
const counted: readonly number[] = risks.flatMap((risk, at) => (isCounted(risk) ? [at] : []));

function strikes(state: State, path: Path, wanted: readonly Wanted[]): Strike[] {
  const struck: Strike[] = [];
  for (const at of counted) {
    const chance = countedChance(at, state, path.chances);
    const builds = Math.round(chance * BUILDS);
    const spared = sparesHeld(at, wanted, path.owned).length > 0;
    if (chance > 0) struck.push({ at, builds, out: strikesWhileOut[at]!, spared });
  }
  return struck;
}

/** Troubles while the lathe can be used and while it cannot, money and hours in one number; only within one filling. */
const trouble = new Float64Array(BUILDS);
const troubleOut = new Float64Array(BUILDS);

/** Fills the totals of builds `from` to `to` from a resolved way of answering. */
export function fillTotals(totals: Totals, way: Resolved, edition: Edition, from = 0, to = BUILDS): void {
  addTerms(totals.goods, way.goods, from, to);
  addTerms(totals.local, way.local, from, to);
  addTerms(totals.credits, way.credits, from, to);
  addTerms(totals.hours, way.work, from, to);
  addTerms(totals.hoursOut, way.workOut, from, to);
  trouble.fill(0, from, to);
  troubleOut.fill(0, from, to);
  for (const { at, builds, out, spared } of way.risks) {
    strike(out ? troubleOut : trouble, edition.risks[at]!, builds, spared, from, to);
  }
  for (const open of way.charges) addOpen(totals.landed, open, from, to);
  addUp(totals, way, from, to);
}

/** Adds one risk to the builds it strikes: by its own order when all are wanted, build by build for a short range. */
function strike(
  sum: Column,
  { order, rank, both, hours }: RiskColumns,
  builds: number,
  spared: boolean,
  from: number,
  to: number,
): void {
  const cost = spared ? hours : both;
  if (to - from === BUILDS) {
    for (let place = 0; place < builds; place += 1) sum[order[place]!]! += cost[place]!;
    return;
  }
  for (let build = from; build < to; build += 1) {
    const place = rank[build]!;
    if (place < builds) sum[build]! += cost[place]!;
  }
}

/** Freight on the goods on top of the charges already there, what is quoted and paid, troubles told apart again, and the totals of money and hours. */
function addUp(totals: Totals, way: Resolved, from: number, to: number): void {
  const { goods, local, landed, credits, troubleMoney, money, hours, hoursOut, troubleHours } = totals;
  const { fixed, allowance, landed: share } = way;
  for (let build = from; build < to; build += 1) {
    landed[build]! += Math.round((goods[build]! + fixed.shared) * share[build]!) + fixed.charges;
    goods[build]! += fixed.goods;
    local[build]! += fixed.local;
    credits[build]! += fixed.credits;
    const both = trouble[build]! + troubleOut[build]!;
    const struck = Math.floor(both / BESIDE);
    const cents = allowance === undefined ? struck : Math.round(allowance * (goods[build]! + local[build]!));
    troubleMoney[build] = cents;
    troubleHours[build] = both - struck * BESIDE;
    money[build] = goods[build]! + local[build]! + landed[build]! + cents + credits[build]!;
    hours[build]! += hoursOut[build]! + troubleHours[build]!;
    hoursOut[build]! += troubleOut[build]! - Math.floor(troubleOut[build]! / BESIDE) * BESIDE;
  }
}
