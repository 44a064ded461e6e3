import { describe, expect, test } from 'vitest';
import { editionByName } from '../../src/content/edition.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { decodeComparison } from '../../src/link/decode.ts';
import { nowCalled } from '../../src/link/grammar.ts';
import { keptLinks } from './corpus.ts';
import { figuresOf, recorded } from './figures.ts';

/** Keys and values of every column of a link. */
const wordsOf = (fragment: string): string[] =>
  fragment
    .replace(/^1\?/, '')
    .split(';')
    .flatMap((column) => [...new URLSearchParams(column)])
    .flatMap(([key, value]) => [key, ...value.split(/[,:/]/)]);

/**
 * A link opens with its own figures for ever. Where this fails, a change of the trade moved a released edition: tie it to
 * the next one (as `packs` is), or take it back; a record is never written anew.
 */
describe('links that are out in the world', () => {
  test.each(keptLinks().map((link) => [link.what, link.fragment] as const))('%s', (what, fragment) => {
    const { first, others, notes, readable } = decodeComparison(fragment);
    expect(readable).toBe(true);
    expect(notes).toEqual([]);
    const written = encodeComparison(first, others, { progress: true, prices: true });
    const again = new Set(wordsOf(written));
    expect(wordsOf(fragment).filter((word) => !again.has(nowCalled(word)))).toEqual([]);
    expect(editionByName(first.edition), `edition ${first.edition}`).toBeDefined();
    expect(figuresOf(fragment)).toBe(recorded().get(what));
  });
});
