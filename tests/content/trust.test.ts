// The pages of trust lead to pages that exist, and every place on them has a name of its own.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { leftOut } from '../../src/content/left-out.ts';
import { trustPages } from '../../src/content/trust-pages.ts';

const src = join(import.meta.dirname, '..', '..', 'src');
const topic = /^book\/topics\/(.+)\/$/;
const exists = (page: string): boolean => {
  const [, id] = topic.exec(page) ?? [];
  return existsSync(join(src, id ? `content/book/${id}.mdx` : `pages/${page}index.astro`));
};
const items = leftOut.flatMap((theme) => theme.items);

test.each(trustPages.map(({ page }) => page))('%s is a page', (page) => {
  expect(exists(page)).toBe(true);
});

test('what is left out leads to pages that exist', () => {
  expect(items.flatMap(({ see }) => (see && !exists(see.page) ? [see.page] : []))).toEqual([]);
});

test('every entry has an anchor of its own', () => {
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
});
