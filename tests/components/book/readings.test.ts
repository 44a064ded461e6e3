// Every link from the book to a word has its way back: the page of words says where the word is read about.
import { expect, test } from 'vitest';
import { glossHtml } from '../../../src/components/book/gloss-html.ts';
import { readingsOf } from '../../../src/components/book/readings.ts';
import { topicPages } from '../../content/topic-pages.ts';

const written = topicPages.map(({ id, head, body }) => ({ place: id, title: head.title, body }));
const readings = readingsOf(written);

test.each(written)('$place', ({ place, body }) => {
  const marked = body.replace(/^#+ .*$/gm, '').replace(/`[^`]*`/g, '');
  const links = [...glossHtml(marked, (word) => word).matchAll(/class="gloss" href="([^"]*)"/g)].map(
    ([, word]) => word!,
  );
  const back = [...readings].filter(([, pages]) => pages.some((page) => page.place === place));
  expect(links.length).toBeGreaterThan(0);
  expect(links.toSorted()).toEqual(back.map(([word]) => word).toSorted());
});

test('the page that uses a word most comes first, others in their own order', () => {
  const page = (place: string, body: string) => ({ place, title: place, body });
  const found = readingsOf([
    page('a', 'A gib.'),
    page('b', 'Gib and gibs.'),
    page('c', 'gib'),
    page('d', 'x'),
  ]);
  expect(found.get('gib')?.map(({ place }) => place)).toEqual(['b', 'a', 'c']);
});
