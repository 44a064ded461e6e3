// Words of the trade are found in running text: longest first, whole, once; and every word has its use in the book.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formsOf, gloss, usesIn } from '../../src/content/gloss.ts';
import { glossary } from '../../src/content/glossary.ts';
import { topicPages } from './topic-pages.ts';

const words = glossary.flatMap((group) => group.words);
const intros = globSync('*.mdx', { cwd: join(import.meta.dirname, '../../src/content/rooms') }).map((file) =>
  readFileSync(join(import.meta.dirname, '../../src/content/rooms', file), 'utf8').replace(
    /^---[\s\S]*?\n---\n/,
    '',
  ),
);
const found = (text: string, used = new Set<string>()) =>
  gloss(text, used).flatMap((each) => (typeof each === 'string' ? [] : [`${each.text}: ${each.word}`]));

describe('words in a text', () => {
  test.each([
    ['the longest word wins', 'The ball screw has a nut.', ['ball screw: ball screw']],
    [
      'a plural is the same word',
      'Both tool posts and grub screws.',
      ['tool posts: tool post', 'grub screws: grub screw'],
    ],
    ['another name leads to the word', 'Some backlash is left.', ['backlash: play']],
    [
      'capital letters do not matter',
      'Tailstock off. A vfd.',
      ['Tailstock: tailstock', 'vfd: three-phase drive'],
    ],
    ['a hyphen stands for a space', 'A tool-post holder.', ['tool-post: tool post']],
    ['a line may end within a word', 'the cross\nslide', ['cross\nslide: cross slide']],
    ['a curved apostrophe is an apostrophe', 'The screw’s lead.', ['lead: lead']],
    ['only the first use is a link', 'A servo, two servos.', ['servo: servo']],
    ['no part of a word is one', 'Gibberish, embedded, half-bed, bedding.', []],
    [
      'a word in the company of its trade',
      'Keep the lead away. Half the feed hold, the\nfeed.',
      ['feed hold: feed hold', 'feed: feed'],
    ],
    ['what is everyday stays text', 'The likely way is to drive on that path and build a line.', []],
  ])('%s', (_, text, links) => {
    expect(found(text)).toEqual(links);
  });

  test('a word that was used before stays text', () => {
    expect(found('A servo and a relay.', new Set(['servo']))).toEqual(['relay: relay']);
  });

  test('the pieces are the text again, whatever it is', () => {
    const piece = fc.oneof(
      fc.string(),
      fc.constantFrom(...words.flatMap((word) => formsOf(word)), ' ', '-', '’', '<', '&'),
    );
    fc.assert(
      fc.property(fc.array(piece), (parts) => {
        const text = parts.join('');
        const whole = gloss(text, new Set()).map((each) => (typeof each === 'string' ? each : each.text));
        expect(whole.join('')).toBe(text);
      }),
    );
  });

  test('headings, code, links and figures of a page are not counted', () => {
    const page =
      '## Servo\n\nA `relay`, [a collet](x/) and two\ngibs; a gib.\n\n<Working figure="tunnel" />\n';
    expect([...usesIn(page)]).toEqual([['gib', 2]]);
  });
});

describe('the list of words', () => {
  test('no form leads to two words', () => {
    const links = words.flatMap((word) =>
      formsOf(word).map((form) => [
        form
          .replace(/.*\((.*)\).*/, '$1')
          .toLowerCase()
          .replace(/[ -]+/g, ' '),
        word.word,
      ]),
    );
    const astray = links.filter(([link, word]) =>
      links.some(([other, its]) => other === link && its !== word),
    );
    expect(astray).toEqual([]);
  });

  test('every word is used in the book, or says why it stays', () => {
    const used = new Set(
      [...topicPages.map(({ body }) => body), ...intros].flatMap((text) => [...usesIn(text).keys()]),
    );
    expect(words.filter(({ word, kept }) => !used.has(word) && !kept).map(({ word }) => word)).toEqual([]);
  });

  test.each(glossary)('$title: in alphabetical order, each with a meaning of its own', (group) => {
    const names = group.words.map(({ word }) => word.toLowerCase());
    expect(names).toEqual(names.toSorted());
    expect(new Set(group.words.map(({ means }) => means)).size).toBe(group.words.length);
  });
});
