import { atom } from 'nanostores';

/** Something the owner should know about how these answers got here. */
export interface Note {
  readonly kind: string;
  readonly say: string;
}

/** What could not be read from a link, and what this device does or refuses to remember. */
export const $notes = atom<readonly Note[]>([]);

/** Takes a notice off the screen. */
export function dismiss(kind: string): void {
  $notes.set($notes.get().filter((note) => note.kind !== kind));
}

/** Puts a notice on the screen, in place of an earlier one of its kind. */
export function addNote(note: Note): void {
  dismiss(note.kind);
  $notes.set([...$notes.get(), note]);
}

export const TICKS_OFFERED: Note = {
  kind: 'ticks-offered',
  say: 'This link carries ticks, readings and hours. This device has its own, which stand here; notes are never in a link.',
};

export const OWN_COUNTED: Note = {
  kind: 'own-counted',
  say: 'This link is not the path that this device remembers. Your own quotes and orders are counted in, so its figures differ from those of whoever sent it.',
};
export const OTHER_TAB: Note = {
  kind: 'other-tab',
  say: 'Another tab has changed your answers. This tab keeps its own; whichever you change last is what this device remembers.',
};
export const REFUSED: Note = {
  kind: 'storage',
  say: 'This browser keeps nothing for this page. The link in the address bar holds every answer: save it as a bookmark.',
};
export const TAKEN_UP: Note = {
  kind: 'remembered',
  say: 'These are the answers that you gave last time on this device.',
};
export const NOT_KEPT: Note = {
  kind: 'not-kept',
  say: 'Your own prices, ticks and shops were left out for this link, so what you type about them here lasts until the page is closed. Load the page again to work on yours.',
};
