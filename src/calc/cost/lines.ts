import type { State } from '../choices/state.ts';
import { addBands, type Band, NOTHING } from '../core/band.ts';
import type { Machine } from '../core/machine.ts';
import type { Part } from '../core/part.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook, PriceEntry } from '../core/price-book.ts';
import type { BillLine } from '../report.ts';
import { type Calendar, orderByOf, stageOf } from '../schedule/order-by.ts';
import { stageOrder } from '../schedule/sequence.ts';
import { parts } from '../trade.ts';
import { reasons, sparesWhy } from './bill.ts';
import { sizedBand } from './edition.ts';
import { times } from './exact-sums.ts';
import type { Orders } from './orders.ts';
import { type Priced, shownPurchase } from './purchase-lines.ts';
import { packsFor, unitsToPay, type Wanted } from './wanted.ts';

/** A part that money was spent on although this edition has no price for it. */
const UNPRICED: PriceEntry = {
  price: NOTHING,
  leadDays: NOTHING,
  pack: 1,
  ship: 'parcel',
  basis: 'memory',
};

interface Sheet {
  readonly state: State;
  readonly machine: Machine;
  readonly path: Path;
  readonly book: PriceBook;
  readonly calendar: Calendar;
  /** What the plan wants of every part, by position. */
  readonly wanted: readonly Wanted[];
}

/**
 * Every line of the bill: what, how many, why, and the band of each and of the line. Owned lines cost nothing and stay
 * listed; what was bought and is no longer asked for stays too, since it was paid.
 */
export function billLines(sheet: Sheet, orders: Orders): BillLine[] {
  const owned = new Set(sheet.path.owned);
  const { wanted } = sheet;
  return parts.flatMap((part, at): BillLine[] => {
    const order = orders.get(at);
    if (wanted[at]!.need === 0 && !order?.spent) return [];
    return [lineOf(sheet, part, at, wanted[at]!, owned.has(part.id), order)];
  });
}

function lineOf(
  sheet: Sheet,
  part: Part,
  at: number,
  { need, keep }: Wanted,
  have: boolean,
  order: Priced | undefined,
): BillLine {
  const { state, machine, book, calendar } = sheet;
  const entry = book.parts[part.id] ?? UNPRICED;
  const each = book.parts[part.id] ? sizedBand(book, part.id, part.scaled === true, machine.size) : NOTHING;
  const stage = stageOf(part, stageOrder, calendar);
  return {
    ...shownPart(part),
    qty: need,
    each,
    line: costOf(each, need + keep, have, order, part.id, book),
    owned: have,
    reasons: need > 0 ? reasons(state, at) : ['bought already; the plan as it stands does not ask for it'],
    leadDays: entry.leadDays,
    ship: entry.ship,
    state: have ? 'have' : (sheet.path.purchases?.[part.id]?.state ?? 'need'),
    keep: { count: keep, why: keep > 0 ? sparesWhy(state, at) : [] },
    ...counted(need + keep, have, order, entry.pack),
    stage,
    orderBy: orderByOf(stage, entry.leadDays, calendar),
    ...sizeOf(part, state),
    ...(order ? { purchase: shownPurchase(order, missing(need + keep, have, order), each) } : {}),
  };
}

/** What of a part is the same on every path. */
const shownPart = (part: Part) => ({
  part: part.id,
  subsystem: part.subsystem,
  name: part.name,
  note: part.note,
  unit: part.unit,
  credit: part.credit === true,
  yearly: part.yearly === true,
  shopTool: part.shopTool === true,
  ...(part.spares ? { spares: part.spares } : {}),
  ...(part.inspect ? { inspect: part.inspect } : {}),
});

/** Units still to be bought beside what is owned, quoted or ordered. */
const missing = (toHave: number, have: boolean, order: Priced | undefined): number =>
  have ? 0 : Math.max(0, toHave - (order?.units ?? 0));

/** Need and spares, whole packs still to be bought, and what is left over of everything bought. */
function counted(toHave: number, have: boolean, order: Priced | undefined, pack: number) {
  const packs = packsFor(missing(toHave, have, order), pack);
  const bought = have ? toHave : (order?.units ?? 0) + packs * pack;
  return { toHave, pack, packs, leftOver: tidy(Math.max(0, bought - toHave)) };
}

const tidy = (units: number): number => Math.round(units * 1e6) / 1e6;

/** Dollars of a line: what was quoted or paid exactly, and the band for what is still missing. */
function costOf(
  each: Band,
  toHave: number,
  have: boolean,
  order: Priced | undefined,
  part: string,
  book: PriceBook,
): Band {
  const paid = order?.goods && (order.spent || !have) ? order.goods.toNumber() : 0;
  const covered = order?.goods ? order.units : 0;
  const rest = have ? NOTHING : times(each, unitsToPay(toHave - covered, part, book));
  return paid === 0 ? rest : addBands([paid, paid, paid], rest);
}

/** What to order, from the design. */
function sizeOf({ size }: Part, state: State): { size: string } | object {
  const words = size?.(state.measure);
  return words === undefined ? {} : { size: words };
}
