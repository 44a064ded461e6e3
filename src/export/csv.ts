/**
 * Tables as comma-separated text after RFC 4180: lines end in CR LF, a quotation mark inside a cell is doubled, and a cell
 * that holds a separator, a quotation mark or a line end stands in quotation marks.
 */
export type Separator = ',' | ';' | '\t';

/** Marks the file as UTF-8 for spreadsheet programs that would otherwise take it for an older encoding. */
export const BYTE_ORDER_MARK = '\uFEFF';

/**
 * What a spreadsheet would run instead of showing: a cell that starts like a formula, after any apostrophes of ours.
 * Source: OWASP, "CSV Injection" (the wide forms of the four signs among them).
 */
const RUNS = /^'*(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/;
const GUARDED = /^'+(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/;
const PLAIN_NUMBER = /^[+-]?\d+(?:\.\d+)?$/;

/** The cell with an apostrophe before what a spreadsheet would run; plain numbers stay numbers, negative ones too. */
export const guarded = (cell: string): string =>
  RUNS.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell;

/** Takes back what `guarded` did. */
export const unguarded = (cell: string): string => (GUARDED.test(cell) ? cell.slice(1) : cell);

function written(cell: string, separator: Separator): string {
  const safe = guarded(cell);
  const quoted = /["\r\n]/.test(safe) || safe.includes(separator) || safe !== safe.trim();
  return quoted ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table as text; every line ends in CR LF, the last one too. A row of one empty cell is written as "" in quotation marks. */
export function toCsv(rows: readonly (readonly string[])[], separator: Separator = ','): string {
  return rows
    .map((row) =>
      row.length === 1 && row[0] === '' ? '""' : row.map((cell) => written(cell, separator)).join(separator),
    )
    .map((line) => `${line}\r\n`)
    .join('');
}
