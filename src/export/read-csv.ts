import type { Purchase, PurchaseState } from '../calc/core/purchase.ts';
import { SUM_OF } from './buy-list.ts';
import { BYTE_ORDER_MARK } from './csv.ts';
import type { CsvRow } from './csv-reader.ts';
import type { FileNote } from './file-note.ts';
import { tooLarge } from './file-note.ts';
import { matchPart, suggestParts } from './match-parts.ts';
import { purchaseShape } from './path-schema.ts';
import { type QuoteField, type QuoteTable, quoteTable } from './quote-columns.ts';
import { type Cells, type ReadRow, type RowDefaults, readRow } from './quote-row.ts';
import { type DecimalMark, markOf } from './read-amount.ts';

/** A row that means one part beyond doubt. */
export interface MatchedQuote {
  readonly part: string;
  readonly purchase: Purchase;
  /** Line of the file, from 1. */
  readonly row: number;
  readonly how: 'id' | 'name';
  /** What to ask the owner about it. */
  readonly remarks: readonly string[];
}

/** A row that was not taken: its text, the reason, and the parts it may mean. With a purchase it can still be taken by hand. */
export interface UnmatchedRow {
  readonly row: number;
  readonly text: string;
  readonly reason: string;
  readonly purchase?: Purchase;
  readonly suggestions: readonly string[];
}

/** What a list of quotes comes to. It changes nothing: the owner looks at it first. */
export interface QuoteProposal {
  readonly matched: readonly MatchedQuote[];
  readonly unmatched: readonly UnmatchedRow[];
  /** Sellers that the rows name. */
  readonly sellers: readonly string[];
  readonly notes: readonly FileNote[];
}

export interface AboutQuotes {
  /** Part ids on the buy list. */
  readonly wanted: readonly string[];
  /** ISO 4217, for prices that name no currency. */
  readonly currency: string;
  /** State of rows that name none; a list of quotes by default. */
  readonly state?: PurchaseState;
}

const MOST_ROWS = 5000;
const SHOWN = 120;

const nothing = (say: string): QuoteProposal => ({
  matched: [],
  unmatched: [],
  sellers: [],
  notes: [{ kind: 'not-a-file', say: `${say} Nothing was changed.` }],
});

/**
 * Reads a list of quotes or a shop's order list from the text of a CSV file (`readFileText` gives it). Never throws, never
 * guesses: rows that do not name a part by id or whole name, and figures that cannot be read, are listed.
 */
export function readQuotes(text: string, about: AboutQuotes): QuoteProposal {
  const refusal = tooLarge(text.length);
  if (refusal) return { ...nothing(''), notes: [refusal] };
  const body = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  const table = quoteTable(body, MOST_ROWS);
  if (!table)
    return nothing(
      'No row of heads was found: one that names an item and a price, such as “Item; Quantity; Unit price”.',
    );
  if (table.cut) return nothing(`This file has more than ${MOST_ROWS} rows.`);
  return proposal(table, about);
}

function proposal(table: QuoteTable, about: AboutQuotes): QuoteProposal {
  const defaults: RowDefaults = {
    currency: table.currency ?? about.currency,
    state: about.state ?? 'quoted',
    mark: markOfTable(table),
  };
  const sorted = sortRows(table, defaults, new Set(about.wanted));
  const sellers = [...sorted.matched, ...sorted.unmatched].flatMap(({ purchase }) => purchase?.seller ?? []);
  return {
    matched: sorted.matched,
    unmatched: sorted.unmatched,
    sellers: [...new Set(sellers)],
    notes: notesOf(table, sorted, defaults),
  };
}

interface Sorted {
  readonly matched: MatchedQuote[];
  readonly unmatched: UnmatchedRow[];
  /** Rows with no price of the owner's. */
  blank: number;
}

function sortRows(table: QuoteTable, defaults: RowDefaults, wanted: ReadonlySet<string>): Sorted {
  const sorted: Sorted = { matched: [], unmatched: [], blank: 0 };
  const rowOfPart = new Map<string, number>();
  for (const row of table.rows) {
    const cells = cellsOf(row, table);
    if (cells('name').startsWith(SUM_OF) && cells('part') === '') continue;
    const read = checked(readRow(cells, defaults));
    const match = matchPart(cells('part'), cells('name'), wanted);
    if (read.nothing && match) sorted.blank += 1;
    else if (match && read.purchase && !rowOfPart.has(match.part)) {
      rowOfPart.set(match.part, row.line);
      const remarks = wanted.has(match.part) ? read.remarks : [...read.remarks, NOT_WANTED];
      sorted.matched.push({ ...match, purchase: read.purchase, row: row.line, remarks });
    } else sorted.unmatched.push(asked(row, cells, read, wanted, match && rowOfPart.get(match.part)));
  }
  return sorted;
}

const NOT_WANTED = 'This part is not on the buy list of this plan.';

function cellsOf(row: CsvRow, { columns }: QuoteTable): Cells {
  return (field: QuoteField) => row.cells[columns.get(field) ?? -1] ?? '';
}

/** The row against the limits of a saved path: what could not be kept is not offered. */
function checked(read: ReadRow): ReadRow {
  if (!read.purchase) return read;
  const result = purchaseShape.safeParse(read.purchase);
  if (result.success) return read;
  const field = String(result.error.issues[0]?.path[0] ?? 'row');
  return { fault: `The ${field} cannot be kept: too long, or with signs that no text holds`, remarks: [] };
}

function asked(
  row: CsvRow,
  cells: Cells,
  read: ReadRow,
  wanted: ReadonlySet<string>,
  earlier: number | undefined,
): UnmatchedRow {
  const twice = earlier === undefined ? undefined : `The same part stands in row ${earlier}, which is used.`;
  const reason = read.fault ?? (read.nothing ? 'No price' : twice) ?? 'No part of the list bears this name';
  const text = row.cells.filter((cell) => cell.trim() !== '').join(' | ');
  return {
    row: row.line,
    text: text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text,
    reason: reason.endsWith('.') ? reason : `${reason}.`,
    ...(read.purchase ? { purchase: read.purchase } : {}),
    suggestions: read.purchase ? suggestParts(cells('name'), wanted) : [],
  };
}

/** The decimal mark of the whole file, where its money leaves no doubt and does not contradict itself. */
function markOfTable(table: QuoteTable): DecimalMark {
  const marks = new Set(
    table.rows.flatMap((row) => {
      const cells = cellsOf(row, table);
      return [markOf(cells('price')) ?? [], markOf(cells('total')) ?? []].flat();
    }),
  );
  return marks.size === 1 ? [...marks][0] : undefined;
}

function notesOf(
  table: QuoteTable,
  { matched, unmatched, blank }: Sorted,
  defaults: RowDefaults,
): FileNote[] {
  const said = (say: string): FileNote => ({ kind: 'said', say });
  const notes: FileNote[] = [];
  if (table.openQuote)
    notes.push(
      said(
        `A quotation mark in row ${table.openQuote} is never closed; that row and those below it were not read.`,
      ),
    );
  if (blank > 0) notes.push(said(`${blank} rows hold no price of yours and were left as they are.`));
  if (!table.columns.has('currency') && !table.currency && matched.length + unmatched.length > 0)
    notes.push(said(`Prices without a currency were read as ${defaults.currency}.`));
  if (matched.some(({ purchase }) => purchase.currency === 'USD') && hasSign(table))
    notes.push(
      said('“$” was read as US dollars. If it is another dollar, change the currency of these lines.'),
    );
  if (matched.length + unmatched.length + blank === 0)
    notes.push(said('The file has heads and no rows below them.'));
  return notes;
}

const hasSign = (table: QuoteTable): boolean =>
  table.rows.some((row) => `${cellsOf(row, table)('price')}${cellsOf(row, table)('total')}`.includes('$'));
