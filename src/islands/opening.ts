import type { Path } from '../calc/core/path.ts';
import { decodePath } from '../link/decode.ts';
import { encodePath } from '../link/encode.ts';
import { type Arrival, arrival, arrivalAfterStep, lastLine, takeLine, writeFragment } from './address.ts';
import { $path, $receipts, place, waitFor } from './figures.ts';
import { keep, unsavedNote } from './keeping.ts';
import { $own, openOwn } from './kept-lines.ts';
import { onOtherTab, recall, remember } from './memory.ts';
import {
  $notes,
  addNote,
  dismiss,
  ELSEWHERE,
  NEWER,
  type Note,
  OTHER_TAB,
  OWN_OFFERED,
  TAKEN_UP,
} from './notes.ts';
import { setOffered, withOffered } from './offered.ts';
import { ownOf, sameOwn, withOwn } from './own-part.ts';
import { loadPreferences } from './preferences.ts';
import {
  $open,
  changedElsewhere,
  keptAs,
  lastOpen,
  overwritten,
  seeNames,
  setOpen,
} from './shelf/open-path.ts';
import { freshName, type KeptRecord } from './shelf/record.ts';
import { recordOf, SHELF } from './shelf/records.ts';
import { unsavedOver } from './unsaved.ts';

/** Which path is in hand: that of the address, one from the shelf, or a new one. */

let started = false;

/** Takes up the path from the address, or from this device, and follows the history. Every island may call it; once is enough. */
export function start(): void {
  if (started) return;
  started = true;
  loadPreferences();
  takeUpAddress();
  window.addEventListener('popstate', () => {
    const arrived = arrivalAfterStep();
    if (arrived) arrive(arrived);
    else writeFragment(encodePath($path.get()));
  });
  // A page that the browser had put by whole may be behind what this tab did since.
  window.addEventListener('pageshow', ({ persisted }) => {
    if (persisted && isBehind()) takeUpAddress();
  });
  onOtherTab((name) => {
    if (name === undefined || name === SHELF + $open.get().id) seeOtherTab();
  });
}

/** Opens what the address of the page stands for, or what this tab had in hand last. */
export const takeUpAddress = (): void => arrive(arrival());

const isBehind = (): boolean => changedElsewhere() || linkOf(arrival().fragment) !== encodePath($path.get());

/** A path as a link has it that carries nothing private, whatever the link it came in carries. */
const linkOf = (fragment: string): string => encodePath(decodePath(fragment).path);
const blank = (): string => linkOf('');

/** An address without a path takes up the one last open; one that says what a kept path says is that path. */
function arrive({ line, fragment }: Arrival): void {
  const ours = line === undefined ? undefined : recordOf(line);
  if (line !== undefined && ours) {
    goOn(line, ours, fragment);
    return;
  }
  const last = fragment === '' ? lastOpen(lastLine()) : undefined;
  const same = fragment === '' ? undefined : keptAs(linkOf(fragment), lastLine());
  const isSaid = last !== undefined && last.record.fragment !== blank();
  const found = last ?? same;
  if (found) open(found.id, found.record, fragment, isSaid ? [TAKEN_UP] : []);
  else openUnkept(line ?? freshName(), fragment);
}

/** The line of this tab: as it is kept now, but what found no room is not given up for that. */
function goOn(id: string, record: KeptRecord, fragment: string): void {
  const over = unsavedOver(id);
  const behind = fragment !== '' && linkOf(fragment) !== record.fragment;
  if (over === undefined || !behind) {
    open(id, record, fragment, behind ? [NEWER] : []);
    return;
  }
  setOpen(id, { ...record, rev: over });
  begin(id, fragment, [unsavedNote()]);
}

/** Opens a kept path. A link that says the same stays in the address as it is: it may carry more. */
function open(id: string, record: KeptRecord, typed: string, notes: readonly Note[] = []): void {
  const isLink = typed !== '' && linkOf(typed) === record.fragment;
  setOpen(id, record);
  begin(id, isLink ? typed : record.fragment, notes);
  if (!isLink) writeFragment(record.fragment);
}

/** Opens a path that is not on the shelf: what a link says, or nothing yet. */
function openUnkept(id: string, fragment: string): void {
  setOpen(id);
  const isKnown = linkOf(fragment) === blank() || recall(SEEN, 'sessionStorage') === id;
  const unsaved = unsavedOver(id) === undefined ? [] : [unsavedNote()];
  begin(id, fragment, isKnown || unsaved.length > 0 ? unsaved : [ELSEWHERE]);
}

/** Which opening is the newest: what is still being read for an older one must not come up any more. */
let turn = 0;

function begin(id: string, fragment: string, notes: readonly Note[]): void {
  turn += 1;
  const mine = turn;
  const { path, notes: unread } = decodePath(fragment);
  setOffered(ownOf(path));
  takeLine(id, fragment);
  $receipts.set([]);
  $notes.set([...notes, ...unread]);
  place(withOwn(path, {}));
  waitFor(openOwn(id).then(() => (mine === turn ? takeUpOwn() : undefined)));
}

/** Puts what this device keeps of the owner's own figures on the path in hand. */
function takeUpOwn(): void {
  const { path, differs } = withOffered(withOwn($path.get(), $own.get()));
  if (differs) addNote(OWN_OFFERED);
  if (!sameOwn(ownOf(path), ownOf($path.get()))) place(path);
}

const SEEN = 'seen-elsewhere';

/** Takes the notice about a path from elsewhere off the screen, on the next pages too. */
export function dismissElsewhere(): void {
  remember(SEEN, $open.get().id, 'sessionStorage');
  dismiss('elsewhere');
}

function seeOtherTab(): void {
  seeNames();
  if (!changedElsewhere()) return;
  if (overwritten()) keep($path.get());
  else addNote(OTHER_TAB);
}

/** Opens a kept path in this tab; false where there is none that can be read. */
export function openKept(id: string): boolean {
  const record = recordOf(id);
  if (record) open(id, record, '');
  return record !== undefined;
}

/** Shows what the other tab made of this path; what stood here was kept before, or came with a link. */
export function takeOtherTab(): void {
  if (!openKept($open.get().id)) dismiss('other-tab');
}

/** Begins a path with no answers. What was open stays on the shelf. */
export function startNew(): void {
  openUnkept(freshName(), blank());
  writeFragment(blank());
}

/** Opens a path, as from a file, and keeps it as a new one. */
export function openNew(path: Path): void {
  openUnkept(freshName(), encodePath(path));
  keep(path);
}
