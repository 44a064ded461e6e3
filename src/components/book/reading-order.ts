/** A page of the book, as it stands in the reading order. */
export interface Stop {
  /** Its address below the base. */
  readonly page: string;
  readonly name: string;
}

interface Room {
  readonly id: string;
  readonly number: number;
  readonly name: string;
}
interface TopicHead {
  readonly id: string;
  readonly data: { readonly title: string; readonly room: string; readonly order: number };
}

export const roomPage = (room: string): string => `book/${room}/`;
export const topicPage = (topic: string): string => `book/topics/${topic}/`;

/** Where the book begins and ends. */
export const contents: Stop = { page: 'book/', name: 'Contents' };

/** The book from front to back: each room, then its topics in their order. */
export const readingOrder = (rooms: readonly Room[], topics: readonly TopicHead[]): Stop[] =>
  rooms.flatMap(({ id, number, name }) => [
    { page: roomPage(id), name: `Room ${number}, ${name}` },
    ...topics
      .filter(({ data }) => data.room === id)
      .sort((a, b) => a.data.order - b.data.order)
      .map((topic) => ({ page: topicPage(topic.id), name: topic.data.title })),
  ]);

/** The pages before and after one in the reading order; the contents stand at either end. */
export function turnsAt(
  order: readonly Stop[],
  page: string,
): { readonly before: Stop; readonly after: Stop } {
  const at = order.findIndex((stop) => stop.page === page);
  if (at < 0) throw new RangeError(`No page of the book stands at ${page}.`);
  return { before: order[at - 1] ?? contents, after: order[at + 1] ?? contents };
}
