// Reads a spreadsheet file back from its zipped XML alone, without the library that wrote it (ECMA-376, part 1, 18.3).
import { Decimal } from 'decimal.js';
import { strFromU8, unzipSync } from 'fflate';

export interface ReadCell {
  readonly text: string;
  /** The number as it stands in the file; missing for text. */
  readonly number?: string;
  readonly formula?: string;
  /** The number format's code, such as 0.00. */
  readonly format?: string;
}

export interface ReadSheet {
  readonly name: string;
  /** Cells by address: "A1". */
  readonly cells: ReadonlyMap<string, ReadCell>;
  readonly rows: number;
  /** Rows held in view. */
  readonly frozen: number;
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const plain = (xml: string): string =>
  xml
    .replace(/<[^>]*>/g, '')
    .replace(/&(#x?[0-9a-f]+|\w+);/gi, (_, name: string) =>
      name.startsWith('#')
        ? String.fromCodePoint(Number(name.startsWith('#x') ? `0${name.slice(1)}` : name.slice(1)))
        : (entities[name] ?? ''),
    );
const attribute = (xml: string, name: string): string | undefined =>
  new RegExp(`\\s${name}="([^"]*)"`).exec(xml)?.[1];
const elements = (xml: string, tag: string): string[] =>
  xml.match(new RegExp(`<${tag}(?=[\\s/>])(?:[^>]*/>|[\\s\\S]*?</${tag}>)`, 'g')) ?? [];

function formatsOf(styles: string): (string | undefined)[] {
  const codes = new Map(
    elements(styles, 'numFmt').map((xml) => [
      attribute(xml, 'numFmtId'),
      plain(attribute(xml, 'formatCode') ?? ''),
    ]),
  );
  const [cellFormats = ''] = elements(styles, 'cellXfs');
  return elements(cellFormats, 'xf').map((xml) => codes.get(attribute(xml, 'numFmtId')));
}

function cellOf(xml: string, shared: readonly string[], formats: readonly (string | undefined)[]): ReadCell {
  const value = /<v>([^<]*)<\/v>/.exec(xml)?.[1];
  const formula = /<f>([^<]*)<\/f>/.exec(xml)?.[1];
  const format = formats[Number(attribute(xml, 's') ?? 0)];
  const more = { ...(formula ? { formula: plain(formula) } : {}), ...(format ? { format } : {}) };
  if (attribute(xml, 't') === 's') return { text: shared[Number(value)] ?? '', ...more };
  return { text: value ?? '', ...(value === undefined ? {} : { number: value }), ...more };
}

/** The sheets of a file in their order. */
export async function readSheets(file: Blob): Promise<ReadSheet[]> {
  const zipped = unzipSync(new Uint8Array(await file.arrayBuffer()));
  const part = (name: string): string => (zipped[name] ? strFromU8(zipped[name]) : '');
  const shared = elements(part('xl/sharedStrings.xml'), 'si').map(plain);
  const formats = formatsOf(part('xl/styles.xml'));
  return elements(part('xl/workbook.xml'), 'sheet').map((xml, at) => {
    const sheet = part(`xl/worksheets/sheet${at + 1}.xml`);
    const [pane = ''] = elements(sheet, 'pane');
    const frozen = attribute(pane, 'state') === 'frozen' ? Number(attribute(pane, 'ySplit') ?? 0) : 0;
    const cells = new Map(
      elements(sheet, 'c').map((cell) => [attribute(cell, 'r')!, cellOf(cell, shared, formats)]),
    );
    return { name: plain(attribute(xml, 'name') ?? ''), cells, rows: elements(sheet, 'row').length, frozen };
  });
}

/** What a cell comes to, its formula worked out from the other cells: SUM over one column, or cells added up. */
export function workedOut(sheet: ReadSheet, address: string): Decimal {
  const cell = sheet.cells.get(address);
  if (cell?.formula === undefined) return new Decimal(cell?.number ?? 'NaN');
  const addUp = (addresses: readonly string[]) =>
    addresses.reduce((total, each) => total.plus(workedOut(sheet, each)), new Decimal(0));
  const range = /^SUM\(([A-Z]+)(\d+):\1(\d+)\)$/.exec(cell.formula);
  if (!range) return addUp(cell.formula.split('+'));
  const [, column = '', from, to] = range;
  return addUp(
    Array.from({ length: Number(to) - Number(from) + 1 }, (_, at) => `${column}${Number(from) + at}`),
  );
}
