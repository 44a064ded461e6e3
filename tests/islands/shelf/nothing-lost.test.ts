import * as fc from 'fast-check';
import { beforeEach, expect, test, vi } from 'vitest';
import { encodePath } from '../../../src/link/encode.ts';
import { hear, load, local, mockStorage, newTab, settle, type Tab, turnTo } from './tabs.ts';

vi.mock('../../../src/islands/compute.ts', () => ({ reportOf: (path: unknown) => ({ path }) }));

/**
 * Two tabs do whatever owners do, in any order. Work that somebody made and nobody who saw it made more of is always on
 * the shelf or among what can be put back, own part and all; and a tab never touches a path that it has not open.
 */
const actions = [
  ...['figure', 'figure', 'figure', 'own', 'own', 'undo', 'reload', 'empty', 'link', 'back', 'hear', 'hear'],
  ...['open', 'new', 'duplicate', 'branch', 'remove', 'put-back', 'rename', 'keep'],
] as const;
const withoutRoom = ['figure', 'figure', 'undo', 'reload', 'hear', 'full', 'room'] as const;
type Action = (typeof actions)[number] | (typeof withoutRoom)[number];
const step = fc.record({ tab: fc.nat(1), action: fc.constantFrom(...actions), which: fc.nat(20) });

/** What stands on a sheet: every change makes it another. */
const stateOf = (fragment: string, own: unknown): string =>
  `${fragment} ${JSON.stringify((own as { allowance?: number }).allowance ?? null)}`;
const shownIn = ({ stores }: Tab): string => {
  const path = stores.$path.get();
  return stateOf(encodePath(path), path);
};

type Texts = ReadonlyMap<string, string>;
const SHELF = 'halfnut/shelf/';
const idsIn = (texts: Texts): string[] =>
  [...texts.keys()].filter((name) => name.startsWith(SHELF)).map((name) => name.slice(SHELF.length));

function stateIn(texts: Texts, id: string): string {
  const own: unknown = JSON.parse(texts.get(`halfnut/own/${id}`) ?? '{"own":{}}').own;
  return stateOf(JSON.parse(texts.get(SHELF + id)!).fragment, own);
}

const removedIn = ({ paths }: Tab): string[] =>
  paths.$removed.get().map(({ id, texts }) => {
    const all = new Map(texts.map(([name, text]) => [`halfnut/${name}`, text]));
    return stateIn(all, id);
  });

const reachable = (tabs: readonly Tab[]): Set<string> =>
  new Set([...idsIn(local.texts).map((id) => stateIn(local.texts, id)), ...tabs.flatMap(removedIn)]);

function setRoom(hasRoom: boolean): void {
  local.isFull = !hasRoom;
}

let number = 0;
const CHANGES: readonly Action[] = ['figure', 'own', 'undo'];

async function act(tab: Tab, action: Action, which: number, links: readonly string[]): Promise<void> {
  turnTo(tab);
  const { stores, paths } = tab;
  const kept = idsIn(local.texts);
  const id = kept[which % Math.max(1, kept.length)] ?? '';
  number += 1;
  const does: Readonly<Record<Action, () => unknown>> = {
    figure: () => stores.setFact('swing', (100 + number) / 1000),
    own: () => stores.changeQuietly({ ...stores.$path.get(), allowance: number / 1e6 }),
    undo: () => stores.undo(),
    reload: () => load(tab, tab.url, tab.state),
    empty: () => load(tab, '/plan/'),
    link: () => load(tab, `/plan/#${links[which % links.length]}`),
    back: () => load(tab, tab.url, { line: id }),
    hear: () => kept.forEach((each) => void hear(tab, SHELF + each)),
    open: () => stores.openKept(id),
    new: () => stores.startNew(),
    duplicate: () => paths.duplicate(id),
    branch: () => paths.branch(id),
    remove: () => paths.remove(id),
    'put-back': () => paths.undoRemove(),
    rename: () => paths.rename(id, `Name ${number}`),
    keep: () => paths.keepHere(),
    full: () => setRoom(false),
    room: () => setRoom(true),
  };
  await does[action]();
  await settle();
}

/** Texts of the paths that neither are the one in hand nor were made or renamed just now. */
function touched(before: Texts, after: Texts, open: string): string[] {
  return idsIn(before).filter((id) => id !== open && before.get(SHELF + id) !== after.get(SHELF + id));
}

let tabs: readonly Tab[];
beforeEach(async () => {
  mockStorage();
  local.clear();
  tabs = [await newTab(), await newTab()];
});

async function fresh(): Promise<void> {
  setRoom(true);
  local.clear();
  for (const tab of tabs) {
    turnTo(tab);
    while (tab.paths.$removed.get().length > 0) tab.paths.undoRemove();
    tab.session.clear();
  }
  local.clear();
  for (const tab of tabs) await load(tab, '/plan/');
}

test('no work is lost whatever two tabs do', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 24 }), async (steps) => {
      await fresh();
      const alive = new Set<string>();
      const links = ['1?edition=2026-12&size=small&swing=90'];
      for (const { tab: at, action, which } of steps) {
        const tab = tabs[at]!;
        const [seen, texts, open] = [shownIn(tab), new Map(local.texts), tab.paths.openId()];
        turnTo(tab);
        const isChange = CHANGES.includes(action);
        await act(tab, action, which, links);
        const shown = shownIn(tab);
        if (isChange && shown !== seen) {
          alive.delete(seen);
          alive.add(shown);
          links.push(shown.split(' ')[0]!);
          expect(touched(texts, local.texts, open)).toEqual([]);
        }
        const found = reachable(tabs);
        expect([...alive].filter((state) => !found.has(state))).toEqual([]);
      }
    }),
    { numRuns: 100 },
  );
});

test('on a device that fills up no tab loses its answers, and they are kept once there is room', async () => {
  const some = fc.record({ tab: fc.nat(1), action: fc.constantFrom(...withoutRoom) });
  await fc.assert(
    fc.asyncProperty(fc.array(some, { minLength: 4, maxLength: 20 }), async (steps) => {
      await fresh();
      for (const { tab: at, action } of steps) {
        const tab = tabs[at]!;
        const seen = shownIn(tab);
        await act(tab, action, 0, []);
        // A page that opens may show what the other tab made of the same path; what was in hand is then kept or went on.
        if (action === 'reload' && shownIn(tab) !== seen)
          expect(tab.session.getItem('halfnut/unsaved')).toBeNull();
        if (['hear', 'full', 'room'].includes(action)) expect(shownIn(tab)).toBe(seen);
      }
      setRoom(true);
      for (const tab of tabs) {
        const seen = shownIn(tab);
        turnTo(tab);
        tab.paths.keepHere();
        expect(shownIn(tab)).toBe(seen);
      }
      const found = reachable(tabs);
      for (const tab of tabs) expect(found).toContain(shownIn(tab));
    }),
    { numRuns: 60 },
  );
});
