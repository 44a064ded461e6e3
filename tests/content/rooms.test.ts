// The introductions of the rooms are whole, and leave numbers to the topic pages, where each has its source.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { rooms } from '../../src/calc/guide.ts';
import { roomIntroSchema, roomSections } from '../../src/content/room-intro.ts';
import { readHead } from './frontmatter.ts';
import { quantitiesIn } from './quantities.ts';
import { topicPages } from './topic-pages.ts';

const folder = join(import.meta.dirname, '..', '..', 'src', 'content', 'rooms');
const [FEWEST, MOST] = [250, 500];

const intros = globSync('*.mdx', { cwd: folder }).map((file) => {
  const text = readFileSync(join(folder, file), 'utf8');
  const [, head = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  return { id: file.replace(/\.mdx$/, ''), head: roomIntroSchema.parse(readHead(head)), body };
});

test('every introduction is of a room', () => {
  const ids = rooms.map(({ id }): string => id);
  expect(intros.length).toBeGreaterThan(0);
  expect(intros.filter(({ id }) => !ids.includes(id)).map(({ id }) => id)).toEqual([]);
});

describe.each(intros)('$id', ({ head, body }) => {
  test('it has its sections, in order', () => {
    expect([...body.matchAll(/^## (.+)$/gm)].map(([, name]) => name)).toEqual([...roomSections]);
  });

  test(`it has ${FEWEST} to ${MOST} words`, () => {
    const words = body.split(/\s+/).filter((word) => /\w/.test(word)).length;
    expect(words).toBeGreaterThanOrEqual(FEWEST);
    expect(words).toBeLessThanOrEqual(MOST);
  });

  test('every page that it sends to exists', () => {
    const ids = topicPages.map(({ id }) => id);
    expect(head.read.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('it carries no number with a unit', () => {
    expect(quantitiesIn(body)).toEqual([]);
  });
});
