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

export const OWN_OFFERED: Note = {
  kind: 'own-offered',
  say: 'This link carries ticks, hours or prices of its own. Your path on this device has others, which stand here; notes are never in a link.',
};
export const ELSEWHERE: Note = {
  kind: 'elsewhere',
  say: 'This path came with a link and is not among your paths yet. Your first change keeps it as a new one; none of yours is touched.',
};
export const OTHER_TAB: Note = {
  kind: 'other-tab',
  say: 'Another tab has changed this path. This tab shows its own answers still; your next change here is kept beside it, as a path of its own.',
};
export const NEWER: Note = {
  kind: 'newer',
  say: 'Another tab has changed this path since you last looked at it here. Its answers stand here now.',
};
export const REFUSED: Note = {
  kind: 'storage',
  say: 'This browser keeps nothing for this page. The link in the address bar holds every answer: save it as a bookmark.',
};
export const FULL: Note = {
  kind: 'storage',
  say: 'This browser has no more room for this site, so your latest change is not among your paths. The link in the address bar holds every answer: save it as a bookmark, or make room under “Your paths”.',
};
export const TAKEN_UP: Note = {
  kind: 'remembered',
  say: 'These are the answers that you gave last time on this device.',
};

/** Two tabs worked on one path: where the work of this one went. */
export const apart = (name: string): Note => ({
  kind: 'apart',
  say: `Another tab had changed this path meanwhile. Nothing is lost: what this tab says is kept beside it as “${name}” and is open here.`,
});
