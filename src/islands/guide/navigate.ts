import { atom } from 'nanostores';
import { pushPlace } from '../address.ts';
import { questionAt } from '../shared/places.ts';
import { start } from '../stores.ts';

/** The question on screen once the page runs, and where its "return" leads; undefined until then. */
export const $place = atom<{ readonly question: string; readonly back?: string } | undefined>(undefined);

let started = false;

function readAddress(): void {
  const question = questionAt(window.location.pathname);
  const back = new URLSearchParams(window.location.search).get('back');
  if (question) $place.set(back ? { question, back } : { question });
}

/** Follows the address from question to question without loading pages. */
export function startGuide(): void {
  if (started) return;
  started = true;
  start();
  readAddress();
  window.addEventListener('popstate', readAddress);
}

/** Shows another question at its top and puts it in the history. */
export function go(href: string): void {
  pushPlace(href);
  readAddress();
  window.scrollTo(0, 0);
}
