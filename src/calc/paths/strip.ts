import { threeOf } from '../cost/buckets.ts';
import { strikesWhileOut } from '../cost/builds.ts';
import { addTerms, type Term } from '../cost/columns.ts';
import type { Difference } from '../cost/difference.ts';
import type { Column } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { parts, tasks } from '../trade.ts';
import { type Deltas, keyOf } from './deltas.ts';
import type { Slice } from './otherwise.ts';
import type { Present } from './present.ts';

/** Dollars and hours more than now, in the same builds; below zero: less. */
export interface MoneyAndHours {
  readonly money: Difference;
  readonly hours: Difference;
}

const HUNDREDTHS = 100;
export const NO_DIFFERENCE: Difference = { p10: 0, p50: 0, p90: 0 };

const column = (): Column => new Float64Array(BUILDS);
const goods = column();
const money = column();
const hours = column();

/** Slices that need the same made one. */
function joined(slices: readonly Slice[]): { key: string; slices: Slice[] } {
  const list: Slice[] = [];
  let last = '';
  let key = '';
  for (const slice of slices) {
    const own = keyOf(slice.deltas);
    if (own === last && list.length > 0) {
      list.push({ ...list.pop()!, to: slice.to });
      continue;
    }
    key += `${slice.from}:${own};`;
    last = own;
    list.push(slice);
  }
  return { key, slices: list };
}

/** Most differences stay when another question is answered; kept by what they add up, for the prices at hand. */
const kept = new WeakMap<Column, Map<string, MoneyAndHours>>();
const KEPT_AT_MOST = 4000;

function keptFor({ edition, machine, ways }: Present): Map<string, MoneyAndHours> {
  const { landed } = ways[0]!;
  const of = edition.prices(machine.size)[0]!;
  const known = kept.get(of) ?? new Map<string, MoneyAndHours>();
  kept.set(of, known);
  if (known.size > KEPT_AT_MOST || lastLanded.get(known) !== landed) known.clear();
  lastLanded.set(known, landed);
  return known;
}
const lastLanded = new WeakMap<Map<string, MoneyAndHours>, Column>();

/**
 * How money and hours differ from now when every build is made as the slices say. Cents are rounded once: a
 * difference of two totals, each rounded by itself, may lie a cent beside.
 */
export function differenceFor(present: Present, all: readonly Slice[]): MoneyAndHours {
  const { key, slices } = joined(all);
  const known = keptFor(present);
  const before = known.get(key);
  if (before) return before;
  const made = { money: moneyOf(present, slices), hours: hoursOf(present, slices) };
  known.set(key, made);
  return made;
}

const isOut = tasks.map(({ lathe }) => lathe === 'out');
const outExtras = new Set(
  tasks.filter(({ lathe }) => lathe === 'out').flatMap(({ extra = [] }) => extra.map(({ id }) => id)),
);

/** How the time differs in which the lathe cannot be used; `unit` divides the hundredths of an hour. */
export function hoursOutFor(present: Present, slices: readonly Slice[], unit: number): Difference {
  const out = slices.map((slice) => ({ ...slice, deltas: whileOut(slice.deltas) }));
  const moved = out.some(({ deltas }) => moves(deltas));
  if (!moved) return NO_DIFFERENCE;
  for (const slice of out) addHours(present, slice);
  return threeOf(hours, unit);
}

const whileOut = ({ tasks: work, extras, risks }: Deltas): Deltas => ({
  parts: [],
  tasks: work.filter(({ at }) => isOut[at]),
  extras: extras.filter(({ id }) => outExtras.has(id)),
  risks: risks.filter(({ at }) => strikesWhileOut[at]),
});

const moves = ({ tasks: work, extras, risks }: Deltas): boolean =>
  work.length + extras.length + risks.length > 0;

function moneyOf(present: Present, slices: readonly Slice[]): Difference {
  if (!slices.some(({ deltas }) => deltas.parts.length + deltas.risks.length > 0)) return NO_DIFFERENCE;
  for (const slice of slices) addMoney(present, slice);
  return threeOf(money, HUNDREDTHS);
}

function hoursOf(present: Present, slices: readonly Slice[]): Difference {
  if (!slices.some(({ deltas }) => moves(deltas))) return NO_DIFFERENCE;
  for (const slice of slices) addHours(present, slice);
  return threeOf(hours, HUNDREDTHS);
}

function addMoney(present: Present, { from, to, way, deltas }: Slice): void {
  const prices = present.edition.prices(present.machine.size);
  const freighted: Term[] = [];
  const plain: Term[] = [];
  for (const { at, times } of deltas.parts) {
    const credit = parts[at]!.credit === true;
    const list = credit || present.edition.local[at] ? plain : freighted;
    list.push({ column: prices[at]!, times: credit ? -times : times });
  }
  money.fill(0, from, to);
  addTerms(money, plain, from, to);
  addTroubles(present, deltas.risks, 'money', money, from, to);
  if (freighted.length === 0) return;
  goods.fill(0, from, to);
  addTerms(goods, freighted, from, to);
  addFreight(way.landed, from, to);
}

/** Goods with what they move in freight, tax and duty. */
function addFreight(share: Column, from: number, to: number): void {
  for (let build = from; build < to; build += 1) {
    money[build]! += Math.floor(goods[build]! * (1 + share[build]!) + 0.5);
  }
}

function addHours(present: Present, { from, to, deltas }: Slice): void {
  const { hours: own, extras } = present.edition;
  const terms: Term[] = [
    ...deltas.tasks.map(({ at, times }) => ({ column: own[at]!, times })),
    ...deltas.extras.map(({ id, times }) => ({ column: extras.get(id)!, times })),
  ];
  hours.fill(0, from, to);
  addTerms(hours, terms, from, to);
  addTroubles(present, deltas.risks, 'hours', hours, from, to);
}

/** Builds that a risk strikes only afterwards, or no longer. */
function addTroubles(
  { edition }: Present,
  risks: Deltas['risks'],
  kind: 'money' | 'hours',
  sum: Column,
  from: number,
  to: number,
): void {
  for (const { at, before, after } of risks) {
    const { order, [kind]: size } = edition.risks[at]!;
    const [was, then] = kind === 'money' ? [before.paid, after.paid] : [before.builds, after.builds];
    const sign = then > was ? 1 : -1;
    const end = Math.max(was, then);
    for (let place = Math.min(was, then); place < end; place += 1) {
      const build = order[place]!;
      if (build >= from && build < to) sum[build]! += sign * size[place]!;
    }
  }
}
