import type { CellObject, Sheet } from 'write-excel-file/universal';

/** Amounts carry their currency in the format, so that they stay numbers: "$1,234.50", "EUR 1,234.50". */
export const DOLLARS = '[$$-409]#,##0.00';
export const inCurrency = (code: string): string => (code === 'USD' ? DOLLARS : `[$${code}] #,##0.00`);

/** A sheet, and what its formulas come to, row by row: for programs that show a sheet without working it out. */
export interface WorkedSheet {
  readonly sheet: Sheet<Blob>;
  readonly results: readonly string[];
}

/** "F" of the sixth column; no table here has 702. */
export const letters = (at: number): string =>
  at < 26 ? String.fromCharCode(65 + at) : letters(Math.floor(at / 26) - 1) + letters(at % 26);

export const headCell = (value: string): CellObject => ({
  value,
  type: String,
  fontWeight: 'bold',
  wrap: true,
});

export const textCell = (value: string): CellObject => ({
  value,
  type: String,
  wrap: value.length > 40,
  alignVertical: 'top',
});

export const dollarCell = (amount: string): CellObject => ({
  value: Number(amount),
  type: Number,
  format: DOLLARS,
  alignVertical: 'top',
});

/** A formula in dollars; `sum` of the column's rows 2 to `last`. */
export const formulaCell = (formula: string): CellObject => ({
  value: formula,
  type: 'Formula',
  format: DOLLARS,
  fontWeight: 'bold',
});

export const sumCell = (at: number, last: number): CellObject =>
  formulaCell(`SUM(${letters(at)}2:${letters(at)}${last})`);
