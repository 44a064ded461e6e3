import type { Purchase } from '../calc/core/purchase.ts';
import type { BillLine, OrderBy, Report } from '../calc/evaluate.ts';
import { roomById } from '../calc/guide.ts';
import { type AmountRange, rangeOf, sumOf } from './amounts.ts';
import { type OrderRow, orderRows, type TotalPart, totalParts } from './orders.ts';

/** Which sum a line belongs to; the three are never added. */
export type Paid = 'once' | 'comes back' | 'every year';

/** One line of the buy list as every file, message and print has it. Counts are units of the list unless said otherwise. */
export interface BuyRow {
  readonly id: string;
  readonly room: string;
  readonly name: string;
  readonly state: BillLine['state'];
  readonly paid: Paid;
  readonly need: number;
  /** Need and spares. */
  readonly toHave: number;
  /** Whole packs still to be bought beside what is quoted or ordered. */
  readonly packs: number;
  readonly pack: number;
  readonly leftOver: number;
  readonly unit: string;
  /** Cut or order size from the design. */
  readonly size: string;
  readonly each: AmountRange;
  /** Before freight, tax and duty; what is quoted or paid counts exactly. */
  readonly line: AmountRange;
  /** As the owner typed it; empty where nothing was. */
  readonly price: string;
  readonly per: string;
  readonly currency: string;
  /** Units quoted or bought, decimal text; empty where the owner gave none. */
  readonly qty: string;
  readonly seller: string;
  /** Day of the quote or the order, ISO 8601. */
  readonly date: string;
  readonly note: string;
  /** Days from order to door. */
  readonly days: { readonly likely: number; readonly slow: number };
  /** ISO 8601 day, or days before or after the start of the work, for the slow delivery; empty where nothing is to order. */
  readonly orderBy: string;
  readonly why: string;
  readonly inspect: string;
}

/** The sum of the lines of one kind, each end by itself: no purchase comes out at either. */
export interface BuyTotal extends AmountRange {
  readonly paid: Paid;
  readonly lines: number;
}

export interface BuyList {
  /** Edition of prices and what they rest on. */
  readonly edition: string;
  readonly basis: string;
  /** Of every amount but the price as typed, ISO 4217. */
  readonly currency: 'USD';
  readonly rows: readonly BuyRow[];
  /** Only the kinds that have lines. */
  readonly totals: readonly BuyTotal[];
  /** Orders by shop; empty until something is quoted or bought. */
  readonly orders: readonly OrderRow[];
  /** What the whole comes to on average over the builds, and its parts, which add up to it. */
  readonly average: { readonly parts: readonly TotalPart[]; readonly total: string };
}

/** First words of the lines below a table that hold its sums. */
export const SUM_OF = 'Sum of lines';

/** What a sum is of, in words. */
export const sumName = (paid: Paid): string =>
  paid === 'comes back' ? `${SUM_OF} that come back` : `${SUM_OF} paid ${paid}`;

function orderByText({ slow, dates }: OrderBy): string {
  if (dates) return dates.slow;
  const days = Math.round(Math.abs(slow));
  if (days === 0) return 'the day the work starts';
  return `${days} ${days === 1 ? 'day' : 'days'} ${slow < 0 ? 'before' : 'after'} the start of the work`;
}

function typed(purchase: Purchase | undefined) {
  const {
    price = '',
    per = 'unit',
    currency = 'USD',
    qty,
    seller = '',
    date = '',
    note = '',
  } = purchase ?? {};
  const priced = price !== '';
  return {
    price,
    per: priced ? per : '',
    currency: priced ? currency : '',
    qty: qty === undefined ? '' : String(qty),
    seller,
    date,
    note,
  };
}

const paidOf = ({ credit, yearly }: BillLine): Paid => {
  if (yearly) return 'every year';
  return credit ? 'comes back' : 'once';
};

/** Whether anything of the line is still to be ordered; what is only quoted is. */
const isToOrder = ({ credit, state, packs }: BillLine): boolean =>
  !credit && state !== 'have' && (packs > 0 || state === 'quoted');

function rowOf(line: BillLine, purchase: Purchase | undefined): BuyRow {
  const { toHave, packs, pack, leftOver, unit, keep, leadDays } = line;
  return {
    id: line.part,
    room: roomById(line.subsystem)?.name ?? line.subsystem,
    name: line.name,
    state: line.state,
    paid: paidOf(line),
    need: line.qty,
    ...{ toHave, packs, pack, leftOver, unit },
    size: line.size ?? '',
    each: rangeOf(line.each),
    line: rangeOf(line.line),
    ...typed(purchase),
    days: { likely: Math.ceil(leadDays[1]), slow: Math.ceil(leadDays[2]) },
    orderBy: isToOrder(line) ? orderByText(line.orderBy) : '',
    why: [...line.reasons, ...keep.why.map((why) => `spare: ${why}`)].join('; '),
    inspect: line.inspect ?? '',
  };
}

function totalOf(paid: Paid, rows: readonly BuyRow[]): BuyTotal[] {
  const lines = rows.filter((row) => row.paid === paid).map(({ line }) => line);
  if (lines.length === 0) return [];
  const at = (end: keyof AmountRange): string => sumOf(lines.map((line) => line[end]));
  return [{ paid, lines: lines.length, low: at('low'), likely: at('likely'), high: at('high') }];
}

/** The buy list of a report: rows by kind of payment and room, and their sums. Every file and print is made from it. */
export function buyList(report: Pick<Report, 'bill' | 'path' | 'edition' | 'sellers' | 'money'>): BuyList {
  const { bill, path, edition } = report;
  const unsorted = [...bill.once, ...bill.perYear].map((line) => rowOf(line, path.purchases?.[line.part]));
  const kinds: readonly Paid[] = ['once', 'comes back', 'every year'];
  const rows = kinds.flatMap((paid) => unsorted.filter((row) => row.paid === paid));
  const totals = kinds.flatMap((paid) => totalOf(paid, rows));
  const about = { edition: edition.id, basis: edition.basis, currency: 'USD' } as const;
  return { ...about, rows, totals, orders: orderRows(report), average: totalParts(report) };
}
