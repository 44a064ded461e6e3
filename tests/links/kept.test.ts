import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { editionByName } from '../../src/content/edition.ts';
import { decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { nowCalled } from '../../src/link/grammar.ts';
import { keptLinks } from './corpus.ts';

const wordsOf = (fragment: string): string[] =>
  [...new URLSearchParams(fragment.split('?')[1])].flatMap(([key, value]) => [key, ...value.split(',')]);

describe('links that are out in the world', () => {
  test.each(keptLinks().map((link) => [link.what, link.fragment] as const))('%s', (_, fragment) => {
    const { path, notes, readable } = decodePath(fragment);
    expect(readable).toBe(true);
    expect(notes).toEqual([]);
    const again = new Set(wordsOf(encodePath(path)));
    expect(wordsOf(fragment).filter((word) => !again.has(nowCalled(word)))).toEqual([]);
    const book = editionByName(path.edition);
    expect(book, `edition ${path.edition}`).toBeDefined();
    expect(evaluate(path, book!).money.p50).toBeGreaterThan(0);
  });
});
