import type { BuyList, BuyRow, BuyTotal, Paid } from './buy-list.ts';
import { sumName } from './buy-list.ts';

/** One column of the buy list, for every table made of it. */
export interface BuyColumn {
  /** Its key in files that name their fields. */
  readonly key: string;
  readonly head: string;
  readonly kind: 'text' | 'count' | 'dollars' | 'typed-money' | 'day';
  /** The cell as text; figures as plain decimal text. */
  readonly text: (row: BuyRow) => string;
  /** Present in columns that are summed. */
  readonly sum?: (total: BuyTotal) => string;
  /** Letters that fit a column of a sheet. */
  readonly wide: number;
}

const text = (key: string, head: string, wide: number, of: (row: BuyRow) => string): BuyColumn => ({
  key,
  head,
  kind: 'text',
  text: of,
  wide,
});
const count = (key: string, head: string, of: (row: BuyRow) => number): BuyColumn => ({
  key,
  head,
  kind: 'count',
  text: (row) => String(of(row)),
  wide: 9,
});
const dollars = (
  key: string,
  head: string,
  of: (row: BuyRow) => string,
  sum?: (total: BuyTotal) => string,
): BuyColumn => ({ key, head, kind: 'dollars', text: of, wide: 12, ...(sum ? { sum } : {}) });

/** The columns in their order. Heads of the owner's own figures are among those that reading a list of quotes knows. */
export const buyColumns: readonly BuyColumn[] = [
  text('item-id', 'Item id', 24, (row) => row.id),
  text('room', 'Room', 18, (row) => row.room),
  text('item', 'Item', 40, (row) => row.name),
  text('state', 'State', 10, (row) => row.state),
  text('paid', 'Paid', 11, (row) => row.paid),
  count('need', 'Need', (row) => row.need),
  count('to-have', 'To have', (row) => row.toHave),
  count('packs', 'Packs to buy', (row) => row.packs),
  count('pack', 'In a pack', (row) => row.pack),
  count('left-over', 'Left over', (row) => row.leftOver),
  text('unit', 'Unit', 8, (row) => row.unit),
  text('size', 'Size', 18, (row) => row.size),
  dollars('each-low', 'Each, low (USD)', ({ each }) => each.low),
  dollars('each-likely', 'Each, likely (USD)', ({ each }) => each.likely),
  dollars('each-high', 'Each, high (USD)', ({ each }) => each.high),
  dollars(
    'low',
    'Line, low (USD)',
    ({ line }) => line.low,
    ({ low }) => low,
  ),
  dollars(
    'likely',
    'Line, likely (USD)',
    ({ line }) => line.likely,
    ({ likely }) => likely,
  ),
  dollars(
    'high',
    'Line, high (USD)',
    ({ line }) => line.high,
    ({ high }) => high,
  ),
  { key: 'price', head: 'Your price', kind: 'typed-money', text: (row) => row.price, wide: 12 },
  text('per', 'Per', 7, (row) => row.per),
  text('currency', 'Currency', 9, (row) => row.currency),
  { key: 'quantity', head: 'Quantity', kind: 'count', text: (row) => row.qty, wide: 9 },
  text('seller', 'Seller', 18, (row) => row.seller),
  { key: 'date', head: 'Date', kind: 'day', text: (row) => row.date, wide: 11 },
  text('note', 'Note', 24, (row) => row.note),
  count('days', 'Days to arrive, likely', ({ days }) => days.likely),
  count('days-slow', 'Days to arrive, slow', ({ days }) => days.slow),
  text('order-by', 'Order by', 22, (row) => row.orderBy),
  text('why', 'Why', 50, (row) => row.why),
  text('inspect', 'Inspect on arrival', 50, (row) => row.inspect),
];

/** A table of the buy list as text: heads, rows, and a line of sums below each kind of payment that has lines. */
export interface BuyTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly sums: readonly (readonly string[])[];
}

/** The text of a sum's cell: its name under the items, its kind, and the sums. */
function sumCell(column: BuyColumn, total: BuyTotal): string {
  if (column.key === 'item') return sumName(total.paid);
  if (column.key === 'paid') return total.paid;
  return column.sum?.(total) ?? '';
}

/** The buy list, or one kind of its lines, as a table of text. */
export function buyTable(list: BuyList, only?: Paid): BuyTable {
  const of = ({ paid }: { readonly paid: Paid }): boolean => only === undefined || paid === only;
  return {
    heads: buyColumns.map(({ head }) => head),
    rows: list.rows.filter(of).map((row) => buyColumns.map((column) => column.text(row))),
    sums: list.totals.filter(of).map((total) => buyColumns.map((column) => sumCell(column, total))),
  };
}
