import { decisionPosition, optionsOf, type State } from '../choices/state.ts';
import type { Band } from '../core/band.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { workOf } from '../schedule/work.ts';
import { parts, risks, tasks } from '../trade.ts';
import { quantities } from './bill.ts';
import { addTerms, type Term } from './columns.ts';
import { BESIDE, type Column, type Edition, type RiskColumns } from './edition.ts';
import { chanceOf, isCounted } from './risks.ts';
import { BUILDS } from './strata.ts';

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

/** One way of answering, resolved: everything that the sums need. */
export interface Resolved {
  readonly goods: readonly Term[];
  readonly local: readonly Term[];
  readonly credits: readonly Term[];
  readonly work: readonly Term[];
  readonly workOut: readonly Term[];
  readonly risks: readonly { readonly at: number; readonly builds: number; readonly out: boolean }[];
  readonly landed: Column;
  readonly landedBand: Band;
}

const countryAt = decisionPosition('country');
const constantShare = new Map<number, Column>();

/** Freight, tax and duty: the owner's own rate where it makes sense, else the band of the country. */
function landedOf(state: State, path: Path, edition: Edition): Pick<Resolved, 'landed' | 'landedBand'> {
  const own = path.facts['landed-rate'];
  if (own !== undefined && own >= 0 && own <= 1.5)
    return { landed: constant(own), landedBand: [own, own, own] };
  const country = optionsOf(countryAt, state.masks[countryAt]!)[0] ?? 'elsewhere';
  const landed = edition.landed.get(country);
  const landedBand = edition.book.landed[country];
  if (!landed || !landedBand)
    throw new Error(`edition ${edition.book.edition} has no landed rate for ${country}`);
  return { landed, landedBand };
}

function constant(share: number): Column {
  const known = constantShare.get(share);
  if (known) return known;
  const column = new Float64Array(BUILDS).fill(share);
  constantShare.set(share, column);
  return column;
}

const isCredit: readonly boolean[] = parts.map((part) => part.credit === true);
/** What is paid every year stands in no total. */
const isOnce: readonly boolean[] = parts.map((part) => part.yearly !== true);

/** Which columns, how often, for one set of choices. */
export function resolve(state: State, machine: Machine, path: Path, edition: Edition): Resolved {
  const owned = new Set(path.owned);
  const prices = edition.prices(machine.size);
  const bought = quantities(state, machine);
  const goods: Term[] = [];
  const local: Term[] = [];
  const credits: Term[] = [];
  for (let at = 0; at < parts.length; at += 1) {
    const times = bought[at]!;
    if (times === 0 || !isOnce[at] || owned.has(parts[at]!.id)) continue;
    const list = isCredit[at] ? credits : edition.local[at] ? local : goods;
    list.push({ column: prices[at]!, times: isCredit[at] ? -times : times });
  }
  const { work, workOut } = workOf(state, edition);
  return { goods, local, credits, work, workOut, risks: strikes(state), ...landedOf(state, path, edition) };
}

const outStages = new Set(tasks.filter((task) => task.lathe === 'out').map((task) => task.stage));
/** Risks that strike while the lathe cannot be used, by position. */
export const strikesWhileOut: readonly boolean[] = risks.map((risk) => outStages.has(risk.stage));
const counted: readonly number[] = risks.flatMap((risk, at) => (isCounted(risk) ? [at] : []));

function strikes(state: State): Resolved['risks'] {
  const struck: { at: number; builds: number; out: boolean }[] = [];
  for (const at of counted) {
    const chance = chanceOf(at, state);
    if (chance > 0) struck.push({ at, builds: Math.round(chance * BUILDS), out: strikesWhileOut[at]! });
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
  for (const { at, builds, out } of way.risks) {
    strike(out ? troubleOut : trouble, edition.risks[at]!, builds, from, to);
  }
  addUp(totals, way.landed, from, to);
}

/** Adds one risk to the builds it strikes: by its own order when all are wanted, build by build for a short range. */
function strike(
  sum: Column,
  { order, rank, both }: RiskColumns,
  builds: number,
  from: number,
  to: number,
): void {
  if (to - from === BUILDS) {
    for (let place = 0; place < builds; place += 1) sum[order[place]!]! += both[place]!;
    return;
  }
  for (let build = from; build < to; build += 1) {
    const place = rank[build]!;
    if (place < builds) sum[build]! += both[place]!;
  }
}

/** Freight on the goods, troubles told apart again, and the totals of money and hours. */
function addUp(totals: Totals, share: Column, from: number, to: number): void {
  const { goods, local, landed, credits, troubleMoney, money, hours, hoursOut, troubleHours } = totals;
  for (let build = from; build < to; build += 1) {
    const both = trouble[build]! + troubleOut[build]!;
    const cents = Math.floor(both / BESIDE);
    troubleMoney[build] = cents;
    troubleHours[build] = both - cents * BESIDE;
    landed[build] = Math.round(goods[build]! * share[build]!);
    money[build] = goods[build]! + local[build]! + landed[build]! + cents + credits[build]!;
    hours[build]! += hoursOut[build]! + troubleHours[build]!;
    hoursOut[build]! += troubleOut[build]! - Math.floor(troubleOut[build]! / BESIDE) * BESIDE;
  }
}
