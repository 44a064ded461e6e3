import type { CellObject, Feature, Row } from 'write-excel-file/universal';
import { type BuyColumn, buyColumns, buyTable } from './buy-columns.ts';
import { type BuyList, type BuyTotal, type Paid, sumName } from './buy-list.ts';
import { dollarCell, headCell, inCurrency, sumCell, textCell, type WorkedSheet } from './sheet-cells.ts';
import { basisSheet, ordersSheet } from './sheet-money.ts';

const sheetNames: Readonly<Record<Paid, string>> = {
  once: 'Buy list',
  'comes back': 'Comes back',
  'every year': 'Every year',
};

const CURRENCY_AT = buyColumns.findIndex(({ key }) => key === 'currency');

/** A cell in its own kind: text stays text whatever it starts with, figures are numbers, days are days. */
function cellOf({ kind }: BuyColumn, text: string, currency: string): CellObject | null {
  if (text === '') return null;
  if (kind === 'text') return textCell(text);
  if (kind === 'dollars') return dollarCell(text);
  if (kind === 'day')
    return { value: new Date(`${text}T00:00:00Z`), type: Date, format: 'yyyy-mm-dd', alignVertical: 'top' };
  const figure = { value: Number(text), type: Number, alignVertical: 'top' } as const;
  return kind === 'count' ? figure : { ...figure, format: inCurrency(currency) };
}

/** The line of sums: a formula over the rows above it in every column that is summed. */
const sumRow = (paid: Paid, last: number): Row =>
  buyColumns.map(({ key, sum }, at): CellObject | null => {
    if (key === 'item') return headCell(sumName(paid));
    return sum ? sumCell(at, last) : null;
  });

function listSheet(list: BuyList, total: BuyTotal): WorkedSheet {
  const { heads, rows } = buyTable(list, total.paid);
  const body = rows.map((row) =>
    row.map((text, at) => cellOf(buyColumns[at]!, text, row[CURRENCY_AT] || list.currency)),
  );
  return {
    sheet: {
      sheet: sheetNames[total.paid],
      data: [heads.map(headCell), ...body, sumRow(total.paid, rows.length + 1)],
      columns: buyColumns.map(({ wide }) => ({ width: wide })),
      stickyRowsCount: 1,
      orientation: 'landscape',
    },
    results: buyColumns.flatMap(({ sum }) => sum?.(total) ?? []),
  };
}

/** Writes what each formula comes to beside it. */
function withResults(sheets: readonly WorkedSheet[]): Feature<Blob> {
  const transform = (xml: string, { sheet: name }: { sheet?: string }): string => {
    const results = sheets.find(({ sheet }) => sheet.sheet === name)?.results ?? [];
    let at = 0;
    return xml.replace(/<f>[^<]*<\/f>/g, (formula) => `${formula}<v>${Number(results[at++])}</v>`);
  };
  return { files: { transform: { 'xl/worksheets/sheet{id}.xml': { transform } } } };
}

/**
 * The buy list as a spreadsheet file: a sheet for what is paid once, for what comes back and for what is paid every year,
 * one for the orders, one for what it comes to on average. Heads are held in view, sums are formulas. The library that
 * writes it is loaded when asked for.
 */
export async function buyListXlsx(list: BuyList): Promise<Blob> {
  const { default: writeSheets } = await import('write-excel-file/universal');
  const orders = list.orders.length > 0 ? [ordersSheet(list)] : [];
  const sheets = [...list.totals.map((total) => listSheet(list, total)), ...orders, basisSheet(list)];
  const features = [withResults(sheets)];
  return writeSheets(
    sheets.map(({ sheet }) => sheet),
    { features },
  ).toBlob();
}
