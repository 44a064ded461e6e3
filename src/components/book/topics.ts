import { type CollectionEntry, getCollection } from 'astro:content';
import { rooms } from '../../calc/guide.ts';
import { to } from '../../islands/shared/places.ts';

export type TopicEntry = CollectionEntry<'book'>;
type Kind = 'decisions' | 'parts' | 'tasks' | 'risks';

const roomNumber = (id: string): number => rooms.find((room) => room.id === id)?.number ?? 0;

/** The topic pages as they are read: by room, then by their order within it. */
export async function topicsInOrder(): Promise<TopicEntry[]> {
  const entries = await getCollection('book');
  return entries.sort(
    (a, b) => roomNumber(a.data.room) - roomNumber(b.data.room) || a.data.order - b.data.order,
  );
}

export const topicPlace = (id: string): string => to(`book/topics/${id}/`);

/** The topic pages that name this question, part, task or risk. */
export const topicsOn = (topics: readonly TopicEntry[], kind: Kind, id: string): TopicEntry[] =>
  topics.filter(({ data }) => data[kind].includes(id));
