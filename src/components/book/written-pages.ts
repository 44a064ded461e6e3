import type { CollectionEntry } from 'astro:content';
import type { Decision } from '../../calc/core/decision.ts';
import { rooms } from '../../calc/guide.ts';
import { to } from '../../islands/shared/places.ts';
import { roomPage } from './reading-order.ts';
import type { WrittenPage } from './readings.ts';
import { type TopicEntry, topicPlace } from './topics.ts';

/** What the book says about a question, without its headings. */
const questionText = ({ why, thumb, findOut, options }: Decision): string =>
  [
    why,
    thumb,
    findOut,
    ...options.flatMap(({ means, incomplete, gains, wrong, needs }) => [
      means,
      incomplete,
      gains,
      wrong,
      needs,
    ]),
  ].join('\n\n');

/** The topic pages with their running text. */
export const topicTexts = (topics: readonly TopicEntry[]): WrittenPage[] =>
  topics.map(({ id, data, body = '' }) => ({ place: topicPlace(id), title: data.title, body }));

/** The pages of the rooms with their running text: introduction, ledes of the topics, questions. */
export const roomTexts = (
  topics: readonly TopicEntry[],
  intros: readonly CollectionEntry<'rooms'>[],
): WrittenPage[] =>
  rooms.map(({ id, name, decisions }) => ({
    place: to(roomPage(id)),
    title: `${name} (the room)`,
    body: [
      intros.find((intro) => intro.id === id)?.body,
      ...topics.filter(({ data }) => data.room === id).map(({ data }) => data.lede),
      ...decisions.map(questionText),
    ].join('\n\n'),
  }));
