import { to } from '../shared/places.ts';
import type { Book, Finder } from './search.ts';

async function load(): Promise<Finder> {
  const [{ finderOf }, answer] = await Promise.all([import('./search.ts'), fetch(to('book/find.json'))]);
  if (!answer.ok) throw new Error(`the text of the book did not come: ${answer.status}`);
  return finderOf((await answer.json()) as Book);
}

let finder: Promise<Finder> | undefined;

/** Fetches the text of the book once. Rejects where it does not come; the next call tries again. */
export function loadFinder(): Promise<Finder> {
  finder ??= load().catch((fault: unknown) => {
    finder = undefined;
    throw fault;
  });
  return finder;
}
