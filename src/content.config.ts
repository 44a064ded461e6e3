import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { topicSchema } from './content/book-topic.ts';
import { roomIntroSchema } from './content/room-intro.ts';

export const collections = {
  book: defineCollection({
    loader: glob({ base: './src/content/book', pattern: '*.mdx' }),
    schema: topicSchema,
  }),
  rooms: defineCollection({
    loader: glob({ base: './src/content/rooms', pattern: '*.mdx' }),
    schema: roomIntroSchema,
  }),
};
