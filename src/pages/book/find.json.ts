import type { APIRoute } from 'astro';
import { topicsInOrder } from '../../components/book/topics.ts';
import { bookToFind } from '../../components/find-pieces.ts';

/** The text of the book by its pieces; fetched when somebody searches. */
export const GET: APIRoute = async () => {
  const topics = await topicsInOrder();
  return Response.json(bookToFind(topics.map(({ id, data, body = '' }) => ({ ...data, id, body }))));
};
