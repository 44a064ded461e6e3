import { Decimal } from 'decimal.js';
import { type Purchase, type PurchaseState, purchaseStates } from '../calc/core/purchase.ts';
import type { QuoteField } from './quote-columns.ts';
import { type DecimalMark, isCurrency, type ReadAmount, readAmount, readQuantity } from './read-amount.ts';
import { readDay } from './read-day.ts';

/** What the caller knows of a file that its rows do not say. */
export interface RowDefaults {
  readonly currency: string;
  readonly state: PurchaseState;
  readonly mark: DecimalMark;
}

/** A row as a purchase, with what is to be asked about it, or the reason why it cannot be read. */
export interface ReadRow {
  readonly purchase?: Purchase;
  /** The row holds nothing of the owner's: no price and no state beyond "need" and "have". */
  readonly nothing?: boolean;
  readonly fault?: string;
  readonly remarks: readonly string[];
}

export type Cells = (field: QuoteField) => string;

type Draft = { -readonly [Key in keyof Purchase]: Purchase[Key] };

const fault = (say: string): ReadRow => ({ fault: say, remarks: [] });

const perOf = (cell: string): Purchase['per'] =>
  (['unit', 'pack', 'line'] as const).find((per) => per === cell.trim().toLowerCase());

/** Reads one row of a list of quotes. Nothing is guessed: a figure that cannot be read makes the row one to ask about. */
export function readRow(cells: Cells, defaults: RowDefaults): ReadRow {
  const state = stateOf(cells('state'));
  const price = amountOf(cells('price'), defaults.mark);
  const total = amountOf(cells('total'), defaults.mark);
  const qty = cells('qty').trim() === '' ? {} : readQuantity(cells('qty'), defaults.mark);
  const wrong = price?.fault ?? total?.fault ?? qty.fault;
  if (wrong) return fault(wrong);
  if (!price && !total && (state === undefined || state === 'need' || state === 'have'))
    return { nothing: true, remarks: [] };
  if (qty.amount !== undefined && Number(qty.amount) <= 0) return fault('The quantity is nothing');
  const draft: Draft = { state: state === undefined || state === 'have' ? defaults.state : state };
  if (qty.amount !== undefined) draft.qty = Number(qty.amount);
  const money = price ?? total;
  if (money?.amount !== undefined) draft.price = money.amount;
  if (money) draft.per = price ? (perOf(cells('per')) ?? 'unit') : 'line';
  return finish(draft, cells, defaults, price, total);
}

const amountOf = (cell: string, mark: DecimalMark): ReadAmount | undefined =>
  cell.trim() === '' ? undefined : readAmount(cell, mark);

function stateOf(cell: string): PurchaseState | 'have' | undefined {
  const said = cell.trim().toLowerCase();
  return said === 'have' ? said : purchaseStates.find((state) => state === said);
}

function finish(
  draft: Draft,
  cells: Cells,
  defaults: RowDefaults,
  price: ReadAmount | undefined,
  total: ReadAmount | undefined,
): ReadRow {
  const remarks: string[] = [];
  const named = cells('currency').trim().toUpperCase();
  if (named !== '' && !isCurrency(named)) return fault(`“${named.slice(0, 30)}” is not a currency`);
  const beside = price?.currency ?? total?.currency;
  if (named !== '' && beside !== undefined && beside !== named)
    return fault(`The figure says ${beside} and the row says ${named}`);
  if (draft.price !== undefined) draft.currency = named || beside || defaults.currency;
  const day = cells('date').trim() === '' ? {} : readDay(cells('date'));
  if (day.day) draft.date = day.day;
  if (day.fault) remarks.push(`The day was left out: ${day.fault}.`);
  for (const field of ['seller', 'note'] as const) {
    const text = cells(field).trim();
    if (text !== '') draft[field] = text;
  }
  remarks.push(...sumRemark(draft, total));
  return { purchase: draft, remarks };
}

/** Where a row prints both: does one price times the quantity make its total, to the cent? */
function sumRemark({ price, qty, per }: Draft, total: ReadAmount | undefined): string[] {
  if (per !== 'unit' || price === undefined || qty === undefined || total?.amount === undefined) return [];
  const product = new Decimal(price).times(qty).toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
  if (product.minus(total.amount).abs().lte('0.01')) return [];
  return [
    `${price} × ${qty} is ${product.toFixed(2)}, and the row says ${total.amount}. Is the price for a pack?`,
  ];
}
