import { atom } from 'nanostores';
import type { Own } from '../../export/own.ts';
import { ownOf } from '../own-part.ts';
import type { Beside } from './remembered.ts';

/** Quotes, orders and whatever else only the owner knows of kept paths, by their ids. */
export type ShelfOwn = Readonly<Record<string, Own>>;

export const $shelfOwn = atom<ShelfOwn>({});

/** Reads the own part of every kept path among the columns that has not been read yet. */
export async function fetchShelfOwn(others: readonly Beside[] = []): Promise<void> {
  const ids = others.flatMap(({ shelf }) => (shelf === undefined || shelf in $shelfOwn.get() ? [] : [shelf]));
  if (ids.length === 0) return;
  const { $shelf, lookAgain, wholePath } = await import('../shelf/kept-paths.ts');
  lookAgain();
  for (const kept of $shelf.get().filter(({ id }) => ids.includes(id)))
    $shelfOwn.set({ ...$shelfOwn.get(), [kept.id]: ownOf(await wholePath(kept)) });
}
