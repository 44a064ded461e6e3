import type { Separator } from './csv.ts';
import { type CsvRow, readCsv } from './csv-reader.ts';
import { isCurrency } from './read-amount.ts';

/** What a column of a list of quotes may hold. */
export type QuoteField =
  | 'part'
  | 'name'
  | 'qty'
  | 'price'
  | 'total'
  | 'per'
  | 'currency'
  | 'seller'
  | 'date'
  | 'state'
  | 'note';

/** Words that head such a column on our own list and on those of shops: English first, then its neighbours. From memory. */
const HEADS: Readonly<Record<QuoteField, readonly string[]>> = {
  part: ['item id', 'part id', 'id'],
  name: [
    ...[
      'item',
      'description',
      'item description',
      'product',
      'product name',
      'article',
      'name',
      'item name',
      'part',
    ],
    ...['bezeichnung', 'artikel', 'artikelbezeichnung', 'beschreibung', 'produkt', 'désignation', 'article'],
    ...['description article', 'produit', 'descripción', 'artículo', 'producto', 'descrizione', 'articolo'],
    ...['omschrijving', 'benämning'],
  ],
  qty: [
    ...['quantity', 'qty', 'quantity bought', 'count', 'pcs', 'ordered', 'menge', 'anzahl', 'stück', 'stk'],
    ...['quantité', 'qté', 'cantidad', 'quantità', 'aantal', 'antal'],
  ],
  price: [
    ...[
      'your price',
      'unit price',
      'price',
      'price each',
      'each',
      'unit cost',
      'cost',
      'preis',
      'einzelpreis',
    ],
    ...[
      'stückpreis',
      'prix',
      'prix unitaire',
      'precio',
      'precio unitario',
      'prezzo',
      'prezzo unitario',
      'prijs',
    ],
    ...['stuksprijs', 'pris'],
  ],
  total: [
    ...['total', 'line total', 'total price', 'amount', 'sum', 'subtotal', 'extended price', 'gesamt'],
    ...[
      'gesamtpreis',
      'summe',
      'betrag',
      'montant',
      'prix total',
      'importe',
      'precio total',
      'totale',
      'importo',
    ],
    ...['totaal', 'bedrag', 'totalt', 'belopp'],
  ],
  per: ['per', 'price per'],
  currency: ['currency', 'währung', 'devise', 'moneda', 'valuta'],
  seller: [
    'seller',
    'shop',
    'supplier',
    'vendor',
    'store',
    'lieferant',
    'händler',
    'fournisseur',
    'proveedor',
  ],
  date: ['date', 'order date', 'quote date', 'datum', 'bestelldatum', 'fecha', 'data'],
  state: ['state', 'status'],
  note: ['note', 'notes', 'remark', 'comment', 'bemerkung', 'notiz'],
};

export interface QuoteTable {
  readonly separator: Separator;
  /** Column by what it holds, from 0. */
  readonly columns: ReadonlyMap<QuoteField, number>;
  /** Currency named in the head of the price or the total. */
  readonly currency?: string;
  readonly rows: readonly CsvRow[];
  readonly openQuote?: number;
  readonly cut: boolean;
}

/** Rows looked through for the heads of the columns: shops print an address or an order number above. */
const SEARCHED = 20;

/** A list of quotes has no more columns, and no longer heads; more is looked past. */
const MOST_COLUMNS = 200;
const MOST_LETTERS = 80;

const plainHead = (head: string): string =>
  head
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replace(/\b[A-Z]{3}\b/g, (code) => (isCurrency(code) ? ' ' : code))
    .toLowerCase()
    .normalize('NFC')
    .replace(/[^\p{L}]+/gu, ' ')
    .trim();

const fieldOf = (head: string): QuoteField | undefined =>
  (Object.keys(HEADS) as QuoteField[]).find((field) => HEADS[field].includes(plainHead(head)));

/** The first column of each kind; a second one of the same kind is not looked at. */
function columnsOf(heads: readonly string[]): Map<QuoteField, number> {
  const columns = new Map<QuoteField, number>();
  for (const [at, head] of heads.slice(0, MOST_COLUMNS).entries()) {
    const field = head.length > MOST_LETTERS ? undefined : fieldOf(head);
    if (field && !columns.has(field)) columns.set(field, at);
  }
  return columns;
}

const isUsable = (columns: ReadonlyMap<QuoteField, number>): boolean =>
  (columns.has('part') || columns.has('name')) && (columns.has('price') || columns.has('total'));

const SIGN_CODES: readonly (readonly [string, string])[] = [
  ['€', 'EUR'],
  ['£', 'GBP'],
  ['$', 'USD'],
];

function currencyInHead(head: string): string | undefined {
  const code = head.match(/\b[A-Z]{3}\b/g)?.find(isCurrency);
  return code ?? SIGN_CODES.find(([sign]) => head.includes(sign))?.[1];
}

interface Found {
  readonly separator: Separator;
  readonly columns: Map<QuoteField, number>;
  readonly heads: readonly string[];
  readonly line: number;
}

function findHeads(text: string, separator: Separator): Found | undefined {
  const found = readCsv(text, separator, SEARCHED).rows.map(({ line, cells }) => ({
    separator,
    columns: columnsOf(cells),
    heads: cells,
    line,
  }));
  return found.find(({ columns }) => isUsable(columns));
}

/**
 * Finds the separator and the row of heads by the words that they hold, and reads the rows below, `most` of them.
 * Undefined when no row of the first twenty names an item and a price.
 */
export function quoteTable(text: string, most: number): QuoteTable | undefined {
  const body = text.replace(/^sep=.\r?\n/i, (line) => line.replace(/[^\r\n]/g, ''));
  const tried = ([',', ';', '\t'] as const).flatMap((separator) => findHeads(body, separator) ?? []);
  const [best] = tried.toSorted((a, b) => b.columns.size - a.columns.size);
  if (!best) return undefined;
  const { rows, openQuote, cut } = readCsv(body, best.separator, most + SEARCHED);
  const below = rows.filter(({ line }) => line > best.line);
  const priced = [best.columns.get('price'), best.columns.get('total')].flatMap(
    (at) => best.heads[at ?? -1] ?? [],
  );
  const currency = priced.map(currencyInHead).find((code) => code !== undefined);
  return {
    separator: best.separator,
    columns: best.columns,
    ...(currency ? { currency } : {}),
    rows: below.slice(0, most),
    ...(openQuote ? { openQuote } : {}),
    cut: cut || below.length > most,
  };
}
