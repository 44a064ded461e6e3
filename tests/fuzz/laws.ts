// What has to hold for any text whatever: nothing is thrown, what is wrong is said in words, what was there stays, and what
// comes of it is a path that the sums take.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition, editionByName } from '../../src/content/edition.ts';
import { decodeText } from '../../src/export/file-text.ts';
import { pathFile } from '../../src/export/json.ts';
import { knownOwn } from '../../src/export/known-own.ts';
import { readQuotes } from '../../src/export/read-csv.ts';
import { readPathFile } from '../../src/export/read-json.ts';
import { readOwn } from '../../src/export/read-own.ts';
import { readShelfFile } from '../../src/export/read-shelf.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { decodeComparison } from '../../src/link/decode.ts';
import { damaged, foreign, transplanted } from './damage.ts';
import { links, pathFiles, quoteLists, shelfFiles } from './real.ts';

export interface Law {
  readonly name: string;
  readonly property: fc.IAsyncProperty<unknown> | fc.IProperty<unknown>;
}

type Said = readonly { readonly say: string }[];

function inWords(notes: Said): void {
  for (const { say } of notes) assert.ok(/[a-z]/i.test(say) && say.length < 600, `no words: ${say}`);
}

const born = Object.getOwnPropertyNames(Object.prototype).join();

function unpolluted(): void {
  assert.equal(Object.getOwnPropertyNames(Object.prototype).join(), born);
  assert.equal(({} as Record<string, unknown>).polluted, undefined);
}

/** Now and then, as it takes a tenth of a second: the sums take the path, and come to figures. */
const sums = fc.integer({ min: 0, max: 39 }).map((n) => n === 0);

function evaluates(path: Path): void {
  const book = editionByName(path.edition);
  assert.ok(book, `no edition ${path.edition}`);
  const { money, hours } = evaluate(path, book);
  for (const span of [money, hours])
    for (const figure of Object.values(span))
      if (typeof figure === 'number') assert.ok(Number.isFinite(figure));
}

const ALL = { prices: true, progress: true };

/** Twice through a file nothing changes, and nothing more is to be said. */
function survives(path: Path): void {
  const once = readPathFile(pathFile(path));
  assert.deepEqual(once.notes, []);
  assert.deepEqual(once.path, path);
}

function link(text: string, counts: boolean): void {
  const { first, others, notes, readable } = decodeComparison(text);
  inWords(notes);
  if (!readable) {
    assert.ok(notes.length > 0);
    assert.deepEqual(first, emptyPath(currentEdition.edition));
    assert.deepEqual(others, []);
  }
  const again = encodeComparison(first, others, ALL);
  const back = decodeComparison(again);
  assert.equal(encodeComparison(back.first, back.others, ALL), again);
  for (const path of [first, ...others.flatMap((each) => (each.kind === 'path' ? each.path : []))]) {
    survives(path);
    if (counts) evaluates(path);
  }
}

function file(text: string, counts: boolean): void {
  const { path, notes, readable } = readPathFile(text);
  inWords(notes);
  if (!readable) {
    assert.ok(notes.length > 0);
    assert.deepEqual(path, emptyPath(currentEdition.edition));
  }
  survives(path);
  if (counts) evaluates(path);
}

function shelf(text: string, counts: boolean): void {
  const { entries, damaged: torn, unread, notes } = readShelfFile(text);
  inWords([...torn, ...notes, ...entries.flatMap((each) => each.notes)]);
  if (entries.length === 0 && unread.length === 0 && text !== '')
    assert.ok(
      torn.length + notes.length > 0 || /"paths"\s*:\s*\[\s*\]/.test(text),
      'nothing read, nothing said',
    );
  for (const { path } of entries) {
    survives(path);
    if (counts) evaluates(path);
  }
}

const wanted = ['bracket-stock'];

function quotes(bytes: Uint8Array): void {
  const { text, notes } = decodeText(bytes);
  inWords(notes);
  if (text === undefined) {
    assert.ok(notes.length > 0);
    return;
  }
  const proposal = readQuotes(text, { wanted, currency: 'USD' });
  inWords(proposal.notes);
  for (const { reason } of proposal.unmatched) assert.notEqual(reason, '');
  const taken = proposal.matched.map(({ part }) => part);
  assert.equal(new Set(taken).size, taken.length);
  const purchases = Object.fromEntries(proposal.matched.map(({ part, purchase }) => [part, purchase]));
  const { own, notes: said } = readOwn(taken.length > 0 ? { purchases } : {}, knownOwn);
  assert.deepEqual(said, []);
  assert.deepEqual(own.purchases ?? {}, purchases);
}

const law = (
  name: string,
  texts: fc.Arbitrary<string>,
  holds: (text: string, counts: boolean) => void,
): Law => ({
  name,
  property: fc.property(texts, sums, (text, counts) => {
    holds(text, counts);
    unpolluted();
  }),
});

const bytesOf = (texts: fc.Arbitrary<string>): fc.Arbitrary<Uint8Array> =>
  fc.oneof(
    texts.map((text) => new TextEncoder().encode(text)),
    texts.map((text) => Uint8Array.from(Buffer.from(`\uFEFF${text}`, 'utf16le'))),
    texts.map((text) => Uint8Array.from(Buffer.from(text, 'latin1'))),
    fc.uint8Array({ maxLength: 300 }),
  );

export const laws: readonly Law[] = [
  law('a link', fc.oneof(damaged(links), foreign), link),
  law('a file of a path', fc.oneof(damaged(pathFiles), transplanted(pathFiles), foreign), file),
  law('a file of paths', fc.oneof(damaged(shelfFiles), transplanted(shelfFiles), foreign), shelf),
  {
    name: 'a list of quotes',
    property: fc.property(bytesOf(fc.oneof(damaged(quoteLists), foreign)), (bytes) => {
      quotes(bytes);
      unpolluted();
    }),
  },
];
