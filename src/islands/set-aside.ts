import { atom } from 'nanostores';
import { forget, recall, remember } from './memory.ts';

/** Kept texts that could not be read, oldest first: to be offered as files, so that nothing typed is lost. */
export const $setAside = atom<readonly string[]>([]);

/** Places for such texts on this device; what finds none stays in memory until the page is closed. */
const PLACES = [1, 2, 3];

const place = (name: string, at: number): string => `${name}/aside-${at}`;

/** Finds what was set aside on earlier visits. */
export function findSetAside(name: string): void {
  $setAside.set(PLACES.flatMap((at) => recall(place(name, at)) ?? []));
}

/** Puts a text aside; false when this device did not take it and it lasts only as long as the page. */
export function setAside(name: string, text: string): boolean {
  if ($setAside.get().includes(text)) return true;
  $setAside.set([...$setAside.get(), text]);
  const free = PLACES.find((at) => recall(place(name, at)) === undefined);
  return free !== undefined && remember(place(name, free), text);
}

/** Throws away what was set aside, once the owner has it as a file or does not want it. */
export function dropSetAside(name: string): void {
  for (const at of PLACES) forget(place(name, at));
  $setAside.set([]);
}
