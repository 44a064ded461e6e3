import { describe, expect, test } from 'vitest';
import { misspelled } from '../../scripts/words/spelling.ts';
import { lists, sections, type Text } from '../../scripts/words/texts.ts';
import { tradeWords } from '../../scripts/words/trade-words.ts';

const faults = ({ where, blocks }: Text) => misspelled(blocks.join('\n')).map((word) => `${where}: ${word}`);

describe('spelling', () => {
  test('the book is spelled as a British dictionary has it, or as our list of trade words', () => {
    expect(sections.flatMap(faults)).toEqual([]);
  });

  test('so are the lists of the trade', () => {
    expect(lists.flatMap(faults)).toEqual([]);
  });

  test('American spelling, and -ize, are found', () => {
    expect(misspelled('The center of the size: we organize and colour.')).toEqual(['center', 'organize']);
  });

  test('every word on our list is used, and stands there once', () => {
    const all = [...sections, ...lists].flatMap(({ blocks }) => blocks).join('\n');
    expect(tradeWords.filter((word) => !new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'iu').test(all))).toEqual(
      [],
    );
    expect(new Set(tradeWords).size).toBe(tradeWords.length);
  });
});
