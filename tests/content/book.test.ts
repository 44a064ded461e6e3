// The topic pages of the book are whole: every id they name exists, and every page has its parts.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { decisions } from '../../src/calc/guide.ts';
import { parts, risks, tasks } from '../../src/calc/trade.ts';
import { checkLabels } from '../../src/components/book/check-labels.ts';
import {
  anchorOf,
  safetySection,
  sectionFor,
  topicSchema,
  topicSections,
} from '../../src/content/book-topic.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { glossary } from '../../src/content/glossary.ts';
import { readHead } from './frontmatter.ts';

const root = join(import.meta.dirname, '..', '..', 'src');
const [FEWEST, MOST] = [600, 1500];

const pages = globSync('content/book/*.mdx', { cwd: root }).map((file) => {
  const text = readFileSync(join(root, file), 'utf8');
  const [, head = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  const id = file.replace(/^.*[\\/]|\.mdx$/g, '');
  return { id, head: topicSchema.safeParse(readHead(head)), body };
});
const drawings = globSync('components/drawings/*.astro', { cwd: root }).map((file) => ({
  id: file.replace(/^.*[\\/]|\.astro$/g, ''),
  text: readFileSync(join(root, file), 'utf8'),
}));

const headings = (body: string): string[] =>
  [...body.matchAll(/^## (.+)$/gm)].map(([, name]) => name!.trim());
const sectionsOf = (body: string): string[] => body.split(/^## .+$/m).slice(1);
/** A working figure stands in the text as a tag of its own; the tag is no word. */
const prose = (text: string): string => text.replace(/^<Working figure="[a-z-]+" \/>$/gm, '');
const words = (text: string): number =>
  prose(text)
    .split(/\s+/)
    .filter((word) => /\w/.test(word)).length;
const idsOf = (list: readonly { readonly id: string }[]) => new Set(list.map(({ id }) => id));

const known = {
  decisions: idsOf(decisions),
  checks: new Set(checkLabels.keys()),
  parts: new Set(parts.map(({ id }) => id).filter((id) => currentEdition.parts[id])),
  tasks: idsOf(tasks),
  risks: idsOf(risks),
};
type Kind = keyof typeof known;
const kinds = Object.keys(known) as Kind[];

test('there are pages to look at', () => {
  expect(pages.length).toBeGreaterThan(0);
});

describe.each(pages)('$id', ({ head, body }) => {
  test('its head is in order', () => {
    expect(head.error?.issues.map(({ message }) => message) ?? []).toEqual([]);
  });

  test('it has its sections, in order, and each says something', () => {
    const found = headings(body).filter((name) => name !== safetySection);
    expect(found).toEqual([...topicSections]);
    expect(sectionsOf(body).filter((section) => words(section) < 25)).toEqual([]);
  });

  test(`it has ${FEWEST} to ${MOST} words`, () => {
    expect(words(body)).toBeGreaterThanOrEqual(FEWEST);
    expect(words(body)).toBeLessThanOrEqual(MOST);
  });

  test('every id that it names exists', () => {
    const unknown = kinds.flatMap((kind) =>
      head.data![kind].filter((id) => !known[kind].has(id)).map((id) => `${kind}: ${id}`),
    );
    expect(unknown).toEqual([]);
  });
});

test.each(kinds)('each of the %s is explained on some page', (kind) => {
  const named = new Set(pages.flatMap(({ head }) => head.data![kind]));
  expect([...known[kind]].filter((id) => !named.has(id))).toEqual([]);
});

test('each kind of thing has a section of its own to be explained in', () => {
  expect(Object.keys(sectionFor).sort()).toEqual([...kinds].sort());
  expect(new Set(Object.values(sectionFor)).size).toBe(kinds.length);
  expect(anchorOf('What goes wrong, and the early sign')).toBe('what-goes-wrong-and-the-early-sign');
});

test.each(kinds)('no page names one of the %s twice', (kind) => {
  const twice = pages.flatMap(({ id, head }) =>
    head.data![kind].filter((each, at, list) => list.indexOf(each) !== at).map((each) => `${id}: ${each}`),
  );
  expect(twice).toEqual([]);
});

test('every word of the trade has an anchor of its own', () => {
  const anchors = glossary.flatMap(({ words }) => words.map(({ word }) => anchorOf(word)));
  expect(anchors.filter((each, at) => !each || anchors.indexOf(each) !== at)).toEqual([]);
});

test('no two pages of a room stand at the same place, and no title is used twice', () => {
  const places = pages.map(({ head }) => `${head.data!.room} ${head.data!.order}`);
  const titles = pages.map(({ head }) => head.data!.title);
  for (const list of [places, titles])
    expect(list.filter((each, at) => list.indexOf(each) !== at)).toEqual([]);
});

test('every page has its drawing', () => {
  const ids = new Set(drawings.map(({ id }) => id));
  expect(pages.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
});

test('every drawing belongs to a page and carries no style of its own', () => {
  const ids = new Set(pages.map(({ id }) => id));
  expect(drawings.filter(({ id }) => !ids.has(id)).map(({ id }) => id)).toEqual([]);
  expect(drawings.filter(({ text }) => /\bstyle=/.test(text)).map(({ id }) => id)).toEqual([]);
});
