// What newcomers ask is answered on the page itself, under the heading where it is said to be.
import { globSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { NewcomerQuestion } from './newcomer.ts';
import { topicPages } from './topic-pages.ts';

const files = globSync('newcomer-*.ts', { cwd: import.meta.dirname });
const read = async (file: string): Promise<readonly NewcomerQuestion[]> =>
  (await import(join(import.meta.dirname, file))).questions;
const questions = (await Promise.all(files.map(read))).flat();

const flat = (text: string): string => text.replace(/[*`]/g, '').replace(/\s+/g, ' ');
const sectionOf = (body: string, heading: string): string =>
  flat(body.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? '');

test('every question is about a page of the book', () => {
  const ids = topicPages.map(({ id }) => id);
  expect(questions.filter(({ topic }) => !ids.includes(topic))).toEqual([]);
});

describe.each(topicPages)('$id', ({ id, body }) => {
  const mine = questions.filter(({ topic }) => topic === id);

  test('three questions of newcomers are kept, each ending as a question does', () => {
    expect(mine.length).toBeGreaterThanOrEqual(3);
    expect(mine.filter(({ ask }) => !ask.endsWith('?'))).toEqual([]);
  });

  test('each is answered under its heading', () => {
    const missing = mine.filter(
      ({ section, answer }) => answer.length < 8 || !sectionOf(body, section).includes(flat(answer)),
    );
    expect(missing).toEqual([]);
  });
});
