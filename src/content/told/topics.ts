import { sectionFor } from '../book-topic.ts';
import { heads } from './heads.ts';

/**
 * What islands know of the book: the topics, and where each kind of thing is explained on their pages. Each of the files
 * beside this one says which topics tell of the things of one kind. The build of the site replaces them by their own
 * results (see `workedOut` in astro.config.mjs): a page loads these few names, not the book.
 */
export const topics: readonly (readonly [id: string, title: string, room: string])[] = heads.map(
  ({ id, head }) => [id, head.title, head.room],
);
export const sections: Readonly<Record<keyof typeof sectionFor, string>> = sectionFor;
