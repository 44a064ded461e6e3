import { type Separator, unguarded } from './csv.ts';

/** A row of a table and the line of the file it starts in, from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface CsvTable {
  readonly rows: readonly CsvRow[];
  /** Line of a quotation mark that opens a cell and is never closed; what follows it was not read. */
  readonly openQuote?: number;
  /** True when there were more rows than asked for; the rest was not read. */
  readonly cut: boolean;
}

interface Cursor {
  readonly text: string;
  readonly separator: Separator;
  at: number;
  line: number;
}

/**
 * Reads comma-separated text after RFC 4180; a lone LF or CR ends a line too, and a quotation mark in the middle of a
 * cell stands for itself. Rows without any text are passed over. The guard of `toCsv` is undone. Stops after `most` rows.
 */
export function readCsv(text: string, separator: Separator, most = Number.POSITIVE_INFINITY): CsvTable {
  const cursor: Cursor = { text, separator, at: 0, line: 1 };
  const rows: CsvRow[] = [];
  while (cursor.at < text.length) {
    if (rows.length >= most) return { rows, cut: true };
    const line = cursor.line;
    const cells = readRow(cursor);
    if (cells === undefined) return { rows, openQuote: line, cut: false };
    if (cells.some((cell) => cell.trim() !== '')) rows.push({ line, cells });
  }
  return { rows, cut: false };
}

/** The cells up to the next line end, or undefined when a quotation mark is not closed. */
function readRow(cursor: Cursor): string[] | undefined {
  const cells: string[] = [];
  for (;;) {
    const cell = readCell(cursor);
    if (cell === undefined) return undefined;
    cells.push(unguarded(cell));
    if (cursor.text[cursor.at] !== cursor.separator) break;
    cursor.at += 1;
  }
  passLineEnd(cursor);
  return cells;
}

function passLineEnd(cursor: Cursor): void {
  const { text, at } = cursor;
  if (at >= text.length) return;
  cursor.at += text.startsWith('\r\n', at) ? 2 : 1;
  cursor.line += 1;
}

function readCell(cursor: Cursor): string | undefined {
  if (cursor.text[cursor.at] !== '"') return readBare(cursor);
  const inside = readQuoted(cursor);
  return inside === undefined ? undefined : inside + readBare(cursor);
}

function readBare(cursor: Cursor): string {
  const from = cursor.at;
  while (cursor.at < cursor.text.length && !endsCell(cursor)) cursor.at += 1;
  return cursor.text.slice(from, cursor.at);
}

function endsCell({ text, at, separator }: Cursor): boolean {
  const mark = text[at];
  return mark === separator || mark === '\n' || mark === '\r';
}

/** What stands between two quotation marks; two of them together stand for one. */
function readQuoted(cursor: Cursor): string | undefined {
  const pieces: string[] = [];
  let from = cursor.at + 1;
  for (;;) {
    const end = cursor.text.indexOf('"', from);
    if (end < 0) return undefined;
    pieces.push(cursor.text.slice(from, end));
    const doubled = cursor.text[end + 1] === '"';
    if (!doubled) break;
    pieces.push('"');
    from = end + 2;
  }
  const inside = pieces.join('');
  cursor.at = cursor.text.indexOf('"', from) + 1;
  cursor.line += inside.split(/\r\n|\r|\n/).length - 1;
  return inside;
}
