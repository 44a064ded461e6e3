import { type CollectionEntry, getCollection } from 'astro:content';
import { rooms } from '../../calc/guide.ts';
import { sectionFor } from '../../content/book-topic.ts';
import { to } from '../../islands/shared/places.ts';
import { topicPage } from './reading-order.ts';

export type TopicEntry = CollectionEntry<'book'>;
export type Kind = keyof typeof sectionFor;

const roomNumber = (id: string): number => rooms.find((room) => room.id === id)?.number ?? 0;

/** The topic pages as they are read: by room, then by their order within it. */
export async function topicsInOrder(): Promise<TopicEntry[]> {
  const entries = await getCollection('book');
  return entries.sort(
    (a, b) => roomNumber(a.data.room) - roomNumber(b.data.room) || a.data.order - b.data.order,
  );
}

export const topicPlace = (id: string): string => to(topicPage(id));

/** Where a topic page explains things of this kind. */
export const sectionPlace = (id: string, kind: Kind): string => `${topicPlace(id)}#${sectionFor[kind]}`;

/** The topic pages that name this question, check, part, task or risk. */
export const topicsOn = (topics: readonly TopicEntry[], kind: Kind, id: string): TopicEntry[] =>
  topics.filter(({ data }) => data[kind].includes(id));
