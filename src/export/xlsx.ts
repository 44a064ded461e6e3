import type { CellObject, Feature, Row, Sheet } from 'write-excel-file/universal';
import { type BuyColumn, buyColumns, buyTable } from './buy-columns.ts';
import { type BuyList, type BuyTotal, type Paid, sumName } from './buy-list.ts';

/** Amounts carry their currency in the format, so that they stay numbers: "$1,234.50", "EUR 1,234.50". */
const DOLLARS = '[$$-409]#,##0.00';
const inCurrency = (code: string): string => (code === 'USD' ? DOLLARS : `[$${code}] #,##0.00`);
const DAY = 'yyyy-mm-dd';

const sheetNames: Readonly<Record<Paid, string>> = {
  once: 'Buy list',
  'comes back': 'Comes back',
  'every year': 'Every year',
};

const CURRENCY_AT = buyColumns.findIndex(({ key }) => key === 'currency');

/** A cell in its own kind: text stays text whatever it starts with, figures are numbers, days are days. */
function cellOf({ kind }: BuyColumn, text: string, currency: string): CellObject | null {
  if (text === '') return null;
  if (kind === 'text') return { value: text, type: String, wrap: text.length > 40, alignVertical: 'top' };
  if (kind === 'day')
    return { value: new Date(`${text}T00:00:00Z`), type: Date, format: DAY, alignVertical: 'top' };
  const figure = { value: Number(text), type: Number, alignVertical: 'top' } as const;
  if (kind === 'count') return figure;
  return { ...figure, format: kind === 'dollars' ? DOLLARS : inCurrency(currency) };
}

/** "F" of the sixth column; the list has fewer than 702. */
const letters = (at: number): string =>
  at < 26 ? String.fromCharCode(65 + at) : letters(Math.floor(at / 26) - 1) + letters(at % 26);

/** The line of sums: a formula over the rows above it in every column that is summed. */
const sumRow = (paid: Paid, rows: number): Row =>
  buyColumns.map(({ key, sum }, at): CellObject | null => {
    if (key === 'item') return { value: sumName(paid), type: String, fontWeight: 'bold' };
    if (!sum) return null;
    const value = `SUM(${letters(at)}2:${letters(at)}${rows + 1})`;
    return { value, type: 'Formula', format: DOLLARS, fontWeight: 'bold' };
  });

function sheetOf(list: BuyList, paid: Paid): Sheet<Blob> {
  const { heads, rows } = buyTable(list, paid);
  const head = heads.map((value): CellObject => ({ value, type: String, fontWeight: 'bold', wrap: true }));
  const body = rows.map((row) =>
    row.map((text, at) => cellOf(buyColumns[at]!, text, row[CURRENCY_AT] || list.currency)),
  );
  return {
    sheet: sheetNames[paid],
    data: [head, ...body, sumRow(paid, rows.length)],
    columns: buyColumns.map(({ wide }) => ({ width: wide })),
    stickyRowsCount: 1,
    orientation: 'landscape',
  };
}

/** What the figures rest on, on a sheet of its own. */
const basisSheet = ({ edition, basis }: BuyList): Sheet<Blob> => ({
  sheet: 'Basis',
  data: [
    [{ value: `Prices of edition ${edition}`, type: String, fontWeight: 'bold' }],
    [{ value: basis, type: String, wrap: true }],
    [
      {
        value: 'Amounts are US dollars before freight, tax and duty; your own prices as you typed them.',
        type: String,
        wrap: true,
      },
    ],
    [
      {
        value: 'The sum of every low and the sum of every high: no purchase comes out that way.',
        type: String,
        wrap: true,
      },
    ],
  ],
  columns: [{ width: 100 }],
});

/** Writes what each formula comes to beside it, for programs that show a sheet without working it out. */
function withResults(totals: readonly BuyTotal[]): Feature<Blob> {
  const transform = (xml: string, { sheet }: { sheet?: string }): string => {
    const total = totals.find(({ paid }) => sheetNames[paid] === sheet);
    const results = total ? buyColumns.flatMap(({ sum }) => sum?.(total) ?? []) : [];
    let at = 0;
    return xml.replace(/<f>[^<]*<\/f>/g, (formula) => `${formula}<v>${Number(results[at++])}</v>`);
  };
  return { files: { transform: { 'xl/worksheets/sheet{id}.xml': { transform } } } };
}

/**
 * The buy list as a spreadsheet file: one sheet for what is paid once, for what comes back and for what is paid every year,
 * each with its heads held in view and a line of sums that are formulas. The library that writes it is loaded when asked for.
 */
export async function buyListXlsx(list: BuyList): Promise<Blob> {
  const { default: writeSheets } = await import('write-excel-file/universal');
  const sheets = [...list.totals.map(({ paid }) => sheetOf(list, paid)), basisSheet(list)];
  return writeSheets(sheets, { features: [withResults(list.totals)] }).toBlob();
}
