// What a device keeps, as another program, a full disk or an older visit may have left it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { $own, $ownNotes, changeOwn, openOwn, ownText } from '../../src/islands/kept-lines.ts';
import { $setAside } from '../../src/islands/set-aside.ts';
import { placeOf, records } from '../../src/islands/shelf/records.ts';
import { decodePath } from '../../src/link/decode.ts';
import { damaged, foreign, transplanted } from './damage.ts';
import type { Law } from './laws.ts';
import { keptOwn, keptRecords } from './real.ts';

/** A browser's storage that is full after so many letters. */
function storage(room: number) {
  const kept = new Map<string, string>();
  const used = () => [...kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem(key: string, text: string) {
      const more = text.length - (kept.get(key)?.length ?? -key.length);
      if (used() + more > room) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, text);
    },
    removeItem: (key: string) => void kept.delete(key),
    key: (at: number) => [...kept.keys()][at] ?? null,
    get length() {
      return kept.size;
    },
  };
}

const scope = globalThis as unknown as { window?: unknown };

/** Runs with a browser's storage of its own, and leaves things as they were. */
async function onDevice(
  room: number,
  run: (kept: ReturnType<typeof storage>) => Promise<void>,
): Promise<void> {
  const before = Object.getOwnPropertyDescriptor(scope, 'window');
  const localStorage = storage(room);
  scope.window = { localStorage, sessionStorage: storage(0) };
  try {
    await run(localStorage);
  } finally {
    if (before) Object.defineProperty(scope, 'window', before);
    else delete scope.window;
  }
}

let visit = 0;

/** What was kept is taken up whole, or the text is in hand as it was and it is said; it is not written over unasked. */
async function own(text: string, room: number): Promise<void> {
  visit += 1;
  const key = `p${visit}`;
  await onDevice(text.length + room, async (kept) => {
    kept.setItem(`halfnut/own/${key}`, text);
    await openOwn(key);
    assert.equal(kept.getItem(`halfnut/own/${key}`), text);
    const notes = $ownNotes.get();
    for (const { say } of notes) assert.match(say, /[a-z]{3}/);
    assert.equal(notes.length > 0, $setAside.get().includes(text));
    if (notes.length === 0) assert.deepEqual(JSON.parse(ownText($own.get())), JSON.parse(text));
    changeOwn((all) => ({ ...all, allowance: 0.1 }));
    assert.equal($own.get().allowance, 0.1);
    if (notes.length > 0) assert.ok($setAside.get().includes(text));
  });
}

/** A place of the shelf holds a path that can be read, or a damaged text as it stands. */
async function place(text: string): Promise<void> {
  await onDevice(1e9, async (kept) => {
    kept.setItem('halfnut/shelf/a', text);
    const { record, damaged: torn } = placeOf('a');
    assert.equal(record === undefined, torn === text);
    assert.equal(records().length, record ? 1 : 0);
    if (record) for (const { say } of decodePath(record.fragment).notes) assert.match(say, /[a-z]{3}/);
    assert.equal(kept.getItem('halfnut/shelf/a'), text);
  });
}

const asKept = (texts: fc.Arbitrary<string>) => fc.oneof(damaged(texts), transplanted(texts), foreign);

export const storeLaws: readonly Law[] = [
  {
    name: 'what a device keeps of the owner’s',
    property: fc.asyncProperty(asKept(keptOwn), fc.constantFrom(30, 2000, 1e9), own),
  },
  { name: 'a path on the shelf', property: fc.asyncProperty(asKept(keptRecords), place) },
];
