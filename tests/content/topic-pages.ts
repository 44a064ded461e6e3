import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Topic, topicSchema } from '../../src/content/book-topic.ts';
import { readHead } from './frontmatter.ts';

const folder = join(import.meta.dirname, '..', '..', 'src', 'content', 'book');

export interface TopicPage {
  readonly id: string;
  readonly head: Topic;
  readonly body: string;
}

/** Every topic page of the book, its head read. Throws where a head is not in order. */
export const topicPages: readonly TopicPage[] = globSync('*.mdx', { cwd: folder }).map((file) => {
  const text = readFileSync(join(folder, file), 'utf8');
  const [, head = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  return { id: file.replace(/\.mdx$/, ''), head: topicSchema.parse(readHead(head)), body };
});
