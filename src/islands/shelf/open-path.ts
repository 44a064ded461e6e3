import { atom } from 'nanostores';
import { recall, remember } from '../memory.ts';
import { freshName, type Kept, type KeptRecord, NAME_LENGTH } from './record.ts';
import { placeOf, putRecord, recordOf, records } from './records.ts';

/** The path that this tab has open: its id, and what the tab has seen of it on the shelf; no record while it is not there. */
export interface OpenPath {
  readonly id: string;
  readonly record?: KeptRecord | undefined;
}

export const $open = atom<OpenPath>({ id: '' });

/** The path that new tabs take up. */
const LAST = 'open';

/** Takes a path in hand. */
export function setOpen(id: string, record?: KeptRecord): void {
  $open.set({ id, record });
  if (record) remember(LAST, id);
}

/** The path last open on this device, or the one changed last; this tab's own goes before. */
export function lastOpen(ofThisTab: string | undefined): { id: string; record: KeptRecord } | undefined {
  for (const id of [ofThisTab, recall(LAST)]) {
    const record = id ? recordOf(id) : undefined;
    if (id && record) return { id, record };
  }
  return records()[0];
}

/** The kept path that says the same as a link; of several the one that was open last. */
export function keptAs(fragment: string, ofThisTab: string | undefined) {
  const same = records().filter(({ record }) => record.fragment === fragment);
  const [first] = [ofThisTab, recall(LAST)].flatMap((id) => same.find((each) => each.id === id) ?? []);
  return first ?? same[0];
}

/** A name with something behind it, within the length of a name. */
export const nameWith = (name: string, behind: string): string =>
  `${name.slice(0, NAME_LENGTH - behind.length - 1)} ${behind}`;

/** Whether another tab has written over, or taken away, what this tab has seen of its path. */
export function changedElsewhere(): boolean {
  const { id, record } = $open.get();
  const { record: stored, damaged } = placeOf(id);
  return damaged !== undefined || stored?.rev !== record?.rev;
}

/**
 * Keeps the open path: over the state that this tab has seen, else as a path of its own, which then is the open one.
 * `calledNow` names a path without a name of its own, should it need one.
 */
export function keepOpen(fragment: string, calledNow: () => string, now = new Date().toISOString()): Kept {
  const { id } = $open.get();
  if (changedElsewhere()) return keepApart(fragment, calledNow(), now);
  const { rev: over, ...known } = recordOf(id) ?? { made: now };
  return put(id, { ...known, changed: now, fragment, rev: freshName(), over });
}

function keepApart(fragment: string, called: string, now: string): Kept {
  const { id, record } = $open.get();
  const name = record?.name ?? called;
  const apart = freshName();
  const kept = put(apart, {
    name: nameWith(name, '(other tab)'),
    note: record?.note,
    from: { id, name },
    ...{ made: now, changed: now, fragment, rev: freshName() },
  });
  if (kept !== 'kept') $open.set({ id: apart });
  return kept === 'kept' ? 'apart' : kept;
}

function put(id: string, record: KeptRecord): Kept {
  const kept = putRecord(id, record);
  if (kept === 'kept') setOpen(id, record);
  return kept;
}

/** Takes up what was typed elsewhere about the open path and changes no answer: its name and its note. */
export function seeNames(): void {
  const { id, record } = $open.get();
  const stored = recordOf(id);
  if (record && stored?.rev === record.rev) $open.set({ id, record: stored });
}

/** Whether another tab wrote over a state of ours that it had not seen: then our work stands nowhere else any more. */
export function overwritten(): boolean {
  const { id, record } = $open.get();
  const stored = recordOf(id);
  return (
    record !== undefined && stored !== undefined && stored.rev !== record.rev && stored.over === record.over
  );
}
