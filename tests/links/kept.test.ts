import { describe, expect, test } from 'vitest';
import { editionByName } from '../../src/content/edition.ts';
import { decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { nowCalled } from '../../src/link/grammar.ts';
import { keptLinks } from './corpus.ts';
import { figuresOf, recorded } from './figures.ts';

const wordsOf = (fragment: string): string[] =>
  [...new URLSearchParams(fragment.split('?')[1])].flatMap(([key, value]) => [key, ...value.split(',')]);

/**
 * A link opens with its own figures for ever. Where this fails, a change of the trade moved a released edition: tie it to
 * the next one (as `packs` is), or take it back; a record is never written anew.
 */
describe('links that are out in the world', () => {
  test.each(keptLinks().map((link) => [link.what, link.fragment] as const))('%s', (what, fragment) => {
    const { path, notes, readable } = decodePath(fragment);
    expect(readable).toBe(true);
    expect(notes).toEqual([]);
    const again = new Set(wordsOf(encodePath(path)));
    expect(wordsOf(fragment).filter((word) => !again.has(nowCalled(word)))).toEqual([]);
    expect(editionByName(path.edition), `edition ${path.edition}`).toBeDefined();
    expect(figuresOf(fragment)).toBe(recorded().get(what));
  });
});
