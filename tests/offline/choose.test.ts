import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressAsked, nameOf, sourceOf, toDrop, toFetch } from '../../src/offline/choose.ts';

const files = { '': '0', 'plan/': '1', 'book/find.json': '2', '_astro/a.1.js': '3', 'not-kept/': '4' };

describe('what is asked for', () => {
  test.each([
    ['https://x.org/plan/', 'https://x.org/', 'plan/'],
    ['https://x.org/plan/?place=a#2?s=light', 'https://x.org/', 'plan/'],
    ['https://x.org/', 'https://x.org/', ''],
    ['https://x.org/shop/lathe/plan/', 'https://x.org/shop/lathe/', 'plan/'],
    ['https://x.org/shop/lathe/', 'https://x.org/shop/lathe/', ''],
    ['https://x.org/a%20b/', 'https://x.org/', 'a%20b/'],
    ['https://x.org/%zz', 'https://x.org/', '%zz'],
    ['https://x.org/other/', 'https://x.org/shop/', undefined],
    ['https://x.org/shop', 'https://x.org/shop/', undefined],
    ['https://y.org/plan/', 'https://x.org/', undefined],
  ])('%s of the site at %s is %s', (url, base, address) => {
    expect(addressAsked(url, base)).toBe(address);
  });
});

describe('where it comes from', () => {
  test.each([
    ['', true, { from: 'drawer', address: '' }],
    ['index.html', true, { from: 'drawer', address: '' }],
    ['plan/', true, { from: 'drawer', address: 'plan/' }],
    ['plan/index.html', true, { from: 'drawer', address: 'plan/' }],
    ['plan', true, { from: 'elsewhere', to: 'plan/' }],
    ['book/find.json', false, { from: 'drawer', address: 'book/find.json' }],
    ['_astro/a.1.js', false, { from: 'drawer', address: '_astro/a.1.js' }],
    ['_astro/a.0.js', false, { from: 'earlier', address: '_astro/a.0.js' }],
    ['pictures/plan.png', false, { from: 'web' }],
    ['plan', false, { from: 'web' }],
    ['never-was/', true, { from: 'web', else: 'not-kept/' }],
    ['constructor', true, { from: 'web', else: 'not-kept/' }],
  ])('"%s" (a page: %s)', (address, isPage, source) => {
    expect(sourceOf(address, files, isPage)).toEqual(source);
  });
});

const anyList = fc.dictionary(
  fc.constantFrom('', 'a/', 'b/', 'c.json', '_astro/d.js'),
  fc.constantFrom('1', '2'),
);
const inDrawer = (...lists: Record<string, string>[]) =>
  new Set(lists.flatMap((list) => Object.keys(list).map((address) => nameOf(address, list))));

describe('from one list to the next', () => {
  test('only what changed is fetched, and what nobody asks for any more goes', () => {
    const before = { 'a/': '1', 'b/': '1', 'gone/': '1' };
    const after = { 'a/': '1', 'b/': '2', 'new/': '1' };
    expect(toFetch(after, inDrawer(before))).toEqual(['b/', 'new/']);
    expect(toDrop(inDrawer(before, after), after)).toEqual(['b/?1', 'gone/?1']);
    expect(toDrop(inDrawer(before, after), after, before)).toEqual([]);
  });

  test('after fetching and dropping the drawer holds the new list, the old one beside it while it is wanted', () => {
    fc.assert(
      fc.property(anyList, anyList, fc.boolean(), (before, after, isOpen) => {
        const drawer = inDrawer(before);
        for (const address of toFetch(after, drawer)) drawer.add(nameOf(address, after));
        for (const name of toDrop(drawer, after, ...(isOpen ? [before] : []))) drawer.delete(name);
        expect(drawer).toEqual(isOpen ? inDrawer(before, after) : inDrawer(after));
        expect(toFetch(after, drawer)).toEqual([]);
      }),
    );
  });
});
