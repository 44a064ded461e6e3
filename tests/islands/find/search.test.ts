// What somebody types, and the page that must stand among the first three. The whole book is the index, as it is built.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bookToFind, topicPieces } from '../../../src/components/find-pieces.ts';
import { anchorOf, topicSections } from '../../../src/content/book-topic.ts';
import { finderOf } from '../../../src/islands/find/search.ts';
import { readHead } from '../../content/frontmatter.ts';

const root = join(import.meta.dirname, '..', '..', '..', 'src', 'content', 'book');
const topics = globSync('*.mdx', { cwd: root }).map((file) => {
  const [, head = '', body = ''] =
    /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(join(root, file), 'utf8')) ?? [];
  const { title, room, lede } = readHead(head) as Record<'title' | 'room' | 'lede', string>;
  return { id: file.replace('.mdx', ''), title, room, lede, body };
});
const book = bookToFind(topics);
const finder = await finderOf(book);
const addresses = (asked: string, most: number) => finder.find(asked, most).map(({ at }) => at);

test('every section of every topic can be found', () => {
  const known = new Set(book.pieces.map(({ at }) => at));
  const wanted = topics.flatMap(({ id }) =>
    topicSections.map((name) => `book/topics/${id}/#${anchorOf(name)}`),
  );
  expect(wanted.filter((at) => !known.has(at))).toEqual([]);
});

test('a topic is cut into its head and its sections, as plain text', () => {
  const body =
    'import A from "a";\n\n## How to measure\n\n**Play.** See [the page](/x/).\n\n<Working figure="x" />\n';
  expect(topicPieces({ id: 'one', title: 'One', room: 'control', lede: 'Short.', body }).slice(1)).toEqual([
    {
      title: 'One: How to measure',
      place: expect.stringContaining('Book, '),
      at: 'book/topics/one/#how-to-measure',
      text: 'Play. See the page.',
    },
  ]);
});

describe('among the first three', () => {
  test.each([
    ['ball screws', 'book/topics/ball-screws/'],
    ['ball scerw', 'book/topics/ball-screws/'],
    ['belt', 'book/topics/belt-or-direct/'],
    ['lead times', 'book/topics/buying-and-lead-times/'],
    ['cabinet heat', 'book/topics/cabinet-and-heat/'],
    ['noise cable', 'book/topics/cable-and-noise/'],
    ['casting', 'book/topics/casting-surprises/'],
    ['commissioning', 'book/topics/commissioning-and-proof/'],
    ['compound', 'book/topics/compound-slide/'],
    ['daily use', 'book/topics/daily-use/'],
    ['drilling', 'book/topics/drilling/'],
    ['limit switches', 'book/topics/home-and-limits/'],
    ['stepper or servo', 'book/topics/open-closed-servo/'],
    ['closed loop', 'book/topics/open-closed-servo/'],
    ['brackets', 'book/topics/making-the-brackets/'],
    ['programs', 'book/topics/making-programs/'],
    ['power supply', 'book/topics/motor-supply/'],
    ['pendant', 'book/topics/operator-panel/'],
    ['threading', 'book/topics/spindle-feedback/'],
    ['spindle motor', 'book/topics/spindle-motor/'],
    ['stop circuit', 'book/topics/stop-circuit/'],
    ['emergency stop', 'book/topics/stop-circuit/'],
    ['tool post', 'book/topics/tool-posts/'],
    ['who should not convert', 'book/topics/who-should-not-convert/'],
    ['backlash', 'words/#word-play'],
    ['jib', 'words/#word-gib'],
    ['center height', 'words/#word-centre-height'],
    ['VFD', 'words/#word-three-phase-drive'],
    ['GFCI', 'book/wiring/#part-residual-device'],
    ['bellows', 'book/wiring/#part-bellows-part'],
    ['chuck unscrews', 'book/spindle/#risk-chuck-unscrews'],
    ['leakage', 'formulas/#'],
    ['duty', 'trust/left-out/#currency'],
    ['insurance', 'trust/left-out/#insurance'],
    ['resale', 'trust/left-out/#resale'],
    ['sources', 'trust/sources/'],
    ['collets', 'book/tooling/#part-collet-chuck'],
    ['aluminum', 'book/approach/#task-air-cut'],
  ])('%s', (asked, at) => {
    const first = addresses(asked, 3);
    expect(
      first.filter((each) => each.startsWith(at)),
      first.join(' '),
    ).not.toEqual([]);
  });
});

test('a word that is nowhere finds nothing, and names its neighbours', () => {
  expect(finder.find('zzqqxx')).toEqual([]);
  expect(finder.near('zzqqxx')).toEqual([]);
  expect(finder.near('spinddlle')).toContain('spindle');
});
