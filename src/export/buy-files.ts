import { buyColumns, buyTable } from './buy-columns.ts';
import type { BuyList } from './buy-list.ts';
import { BYTE_ORDER_MARK, type Separator, toCsv } from './csv.ts';
import type { PathFile } from './path-schema.ts';

/** How a spreadsheet of the reader's country expects the file. */
export interface CsvStyle {
  readonly separator?: Separator;
  /** Mark the file as UTF-8, for spreadsheet programs that would otherwise spoil letters with accents. */
  readonly mark?: boolean;
}

/** The buy list as the text of a CSV file, its sums in the last lines. `readQuotes` reads it back. */
export function buyListCsv(list: BuyList, { separator = ',', mark = true }: CsvStyle = {}): string {
  const { heads, rows, sums } = buyTable(list);
  return (mark ? BYTE_ORDER_MARK : '') + toCsv([heads, ...rows, ...sums], separator);
}

/** The buy list as it goes into the file of a path, for other programs to read. */
export function buyListJson(list: BuyList): NonNullable<PathFile['buy-list']> {
  const { edition, basis, currency, rows, totals, orders, average } = list;
  return {
    basis: `Edition ${edition}. ${basis}`,
    currency,
    rows: rows.map((row) => Object.fromEntries(buyColumns.map(({ key, text }) => [key, text(row)]))),
    totals: totals.map(({ paid, low, likely, high }) => ({ paid, low, likely, high })),
    orders: [...orders],
    average: { parts: [...average.parts], total: average.total },
  };
}
