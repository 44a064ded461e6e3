import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { topicSchema } from './content/book-topic.ts';

export const collections = {
  book: defineCollection({
    loader: glob({ base: './src/content/book', pattern: '*.mdx' }),
    schema: topicSchema,
  }),
};
