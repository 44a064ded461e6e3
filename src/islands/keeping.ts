import type { Path } from '../calc/core/path.ts';
import { encodePath } from '../link/encode.ts';
import { renameLine, writeFragment } from './address.ts';
import { place } from './figures.ts';
import { $own, moveOwn, replaceAll } from './kept-lines.ts';
import { addNote, apart, dismiss, FULL, type Note, REFUSED } from './notes.ts';
import { ownOf, sameOwn } from './own-part.ts';
import { calledAfter } from './shelf/called.ts';
import { $open, keepOpen } from './shelf/open-path.ts';
import type { Kept } from './shelf/record.ts';
import { markSaved, markUnsaved } from './unsaved.ts';

/** Puts the path on the screen, into the address and on the shelf, its own part beside it. */
export function keep(path: Path): void {
  const fragment = encodePath(path);
  const { id: before } = $open.get();
  place(path);
  say(keepOpen(fragment, () => calledAfter(path)));
  const { id } = $open.get();
  if (id !== before) moveOwn(id);
  if (!sameOwn($own.get(), ownOf(path))) replaceAll(ownOf(path));
  renameLine(id);
  writeFragment(fragment);
}

/** What the last attempt to keep something came to, for pages that open later. */
let failed: Kept = 'full';

/** The notice about work that stands in the address alone. */
export const unsavedNote = (): Note => (failed === 'refused' ? REFUSED : FULL);

function say(kept: Kept): void {
  const { id, record } = $open.get();
  if (kept === 'full' || kept === 'refused') {
    failed = kept;
    markUnsaved(id, record?.rev);
    addNote(unsavedNote());
    return;
  }
  markSaved();
  for (const kind of ['storage', 'elsewhere', 'other-tab', 'newer']) dismiss(kind);
  if (kept === 'apart') addNote(apart(record?.name ?? ''));
}
