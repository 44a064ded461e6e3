import { globSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { rooms } from '../../calc/guide.ts';
import { type Topic, topicSchema } from '../book-topic.ts';
import { readHead } from './read-head.ts';

const BOOK = join(import.meta.dirname, '..', 'book');

function headOf(file: string): { id: string; head: Topic } {
  const [, head = ''] = /^---\r?\n([\s\S]*?)\n---\r?\n/.exec(readFileSync(join(BOOK, file), 'utf8')) ?? [];
  return { id: basename(file, '.mdx'), head: topicSchema.parse(readHead(head)) };
}

const roomOf = ({ room }: Topic): number => rooms.findIndex(({ id }) => id === room);

/** The heads of the topic pages as they are read: by room, then by their order within it. Read from files: for the build and for tests. */
export const heads = globSync('*.mdx', { cwd: BOOK })
  .map(headOf)
  .sort((a, b) => roomOf(a.head) - roomOf(b.head) || a.head.order - b.head.order);
