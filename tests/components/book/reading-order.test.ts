// The book is one chain: every room, followed by its topics, once each, the same way there and back.
import { expect, test } from 'vitest';
import { rooms } from '../../../src/calc/guide.ts';
import {
  contents,
  readingOrder,
  roomPage,
  topicPage,
  turnsAt,
} from '../../../src/components/book/reading-order.ts';
import { topicPages } from '../../content/topic-pages.ts';

const topics = topicPages.map(({ id, head }) => ({ id, data: head }));
const order = readingOrder(rooms, topics);
const pages = order.map(({ page }) => page);

test('it has every room and every topic once', () => {
  const all = [...rooms.map(({ id }) => roomPage(id)), ...topics.map(({ id }) => topicPage(id))];
  expect(pages.toSorted()).toEqual(all.toSorted());
});

test('the topics of a room follow its page', () => {
  const roomAt = (at: number) => pages.slice(0, at + 1).findLast((page) => !page.includes('/topics/'));
  const astray = topics.filter(
    ({ id, data }) => roomAt(pages.indexOf(topicPage(id))) !== roomPage(data.room),
  );
  expect(astray).toEqual([]);
});

test('from the contents onwards every page is met once, and the last leads back to the contents', () => {
  const met: string[] = [];
  for (let at = pages[0]!; at !== contents.page; at = turnsAt(order, at).after.page) met.push(at);
  expect(met).toEqual(pages);
});

test('the way back is the way there', () => {
  const met: string[] = [];
  for (let at = pages.at(-1)!; at !== contents.page; at = turnsAt(order, at).before.page) met.push(at);
  expect(met).toEqual(pages.toReversed());
});

test('a page that is not in the book has no place in it', () => {
  expect(() => turnsAt(order, 'plan/')).toThrow('plan/');
});
