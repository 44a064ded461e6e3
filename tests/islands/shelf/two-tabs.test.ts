import { beforeEach, describe, expect, test, vi } from 'vitest';
import { encodePath } from '../../../src/link/encode.ts';
import { hear, load, local, mockStorage, newTab, said, settle, type Tab, turnTo } from './tabs.ts';

vi.mock('../../../src/islands/compute.ts', () => ({ reportOf: (path: unknown) => ({ path }) }));

const records = () =>
  [...local.texts].filter(([key]) => key.startsWith('halfnut/shelf/')).map(([, text]) => JSON.parse(text));
const names = () => records().map(({ name }) => name as string | undefined);
const fragments = () => records().map(({ fragment }) => fragment as string);
const linkOf = (tab: Tab) => encodePath(tab.stores.$path.get());
const swing = (tab: Tab, mm: number) => {
  turnTo(tab);
  tab.stores.setFact('swing', mm / 1000);
};
const allow = (tab: Tab, allowance: number) => {
  turnTo(tab);
  tab.stores.changeQuietly({ ...tab.stores.$path.get(), allowance });
};

let [a, b]: Tab[] = [];
async function twoTabs(): Promise<[Tab, Tab]> {
  a = await newTab();
  b = await newTab();
  return [a, b];
}

beforeEach(() => {
  local.clear();
  local.isFull = false;
  mockStorage();
});

describe('what older visits kept', () => {
  test('is the first path, with its own part, and nothing is written before it is changed', async () => {
    local.setItem('halfnut/path', '1?edition=2026-12&size=large&swing=300');
    local.setItem('halfnut/own/path', '{"version":1,"own":{"allowance":0.2}}');
    const tab = await newTab();
    await vi.waitFor(() => expect(tab.stores.$path.get().allowance).toBe(0.2));
    expect(tab.stores.$path.get()).toMatchObject({ size: 'large', facts: { swing: 0.3 } });
    expect(tab.paths.openId()).toBe('path');
    tab.paths.lookAgain();
    expect(tab.paths.$shelf.get().map(({ id }) => id)).toEqual(['path']);
    expect(local.getItem('halfnut/path')).not.toBeNull();
    swing(tab, 310);
    expect(local.getItem('halfnut/path')).toBeNull();
    expect(fragments()).toEqual([linkOf(tab)]);
    expect(local.getItem('halfnut/own/path')).toContain('0.2');
  });
});

describe('a link from elsewhere', () => {
  const LINK = '1?edition=2026-12&size=small&swing=180';

  test('stands without anything of ours, says so, and is kept as a new path by the first change', async () => {
    const tab = await newTab();
    swing(tab, 300);
    allow(tab, 0.3);
    const mine = tab.paths.openId();
    await load(tab, `/plan/#${LINK}`);
    expect(tab.stores.$path.get()).toMatchObject({ size: 'small', facts: { swing: 0.18 } });
    expect(tab.stores.$path.get().allowance).toBeUndefined();
    expect(said(tab)).toEqual(['elsewhere']);
    expect(records()).toHaveLength(1);
    allow(tab, 0.1);
    expect(said(tab)).toEqual([]);
    expect(records()).toHaveLength(2);
    turnTo(tab);
    tab.stores.openKept(mine);
    await settle();
    expect(tab.stores.$path.get()).toMatchObject({ facts: { swing: 0.3 }, allowance: 0.3 });
  });

  test('that says what a kept path says opens that path with its own part', async () => {
    const tab = await newTab();
    swing(tab, 300);
    allow(tab, 0.3);
    const [id, link] = [tab.paths.openId(), linkOf(tab)];
    turnTo(tab);
    tab.stores.startNew();
    await load(tab, `/plan/#${link}`);
    expect(tab.paths.openId()).toBe(id);
    expect(tab.stores.$path.get().allowance).toBe(0.3);
    expect(said(tab)).toEqual([]);
  });

  const TICKED = `${LINK}&done=write-job-list:20270104`;
  const progress = expect.objectContaining({ done: { 'write-job-list': '2027-01-04' } });

  test('brings its ticks into the new path', async () => {
    const tab = await newTab();
    await load(tab, `/bench/#${TICKED}`);
    await load(tab, tab.url);
    expect(tab.stores.$path.get().progress).toEqual(progress);
    turnTo(tab);
    tab.stores.keepNow();
    const own = JSON.parse(local.getItem(`halfnut/own/${tab.paths.openId()}`)!).own;
    expect(own.progress).toEqual(progress);
  });

  test('fills the ticks of a kept path that has none, and asks before it takes the place of others', async () => {
    const tab = await newTab();
    await load(tab, `/bench/#${LINK}`);
    allow(tab, 0.2);
    await load(tab, `/bench/#${TICKED}`);
    expect(tab.stores.$path.get()).toMatchObject({ allowance: 0.2, progress });
    turnTo(tab);
    const { progress: taken, ...path } = tab.stores.$path.get();
    tab.stores.changeQuietly({ ...path, progress: { ...taken!, done: { 'write-job-list': '2027-02-02' } } });
    await load(tab, `/bench/#${TICKED}`);
    expect(tab.stores.$path.get().progress?.done).toEqual({ 'write-job-list': '2027-02-02' });
    expect(said(tab)).toEqual(['own-offered']);
    turnTo(tab);
    tab.stores.takeOffered();
    expect(tab.stores.$path.get()).toMatchObject({ allowance: 0.2, progress });
    expect(said(tab)).toEqual([]);
  });
});

describe('two tabs on one path', () => {
  test('each keep their work: the later one beside it, and it is said', async () => {
    const [one, two] = await twoTabs();
    swing(one, 300);
    await load(two, '/questions/');
    expect(two.paths.openId()).toBe(one.paths.openId());
    swing(one, 310);
    hear(two, `halfnut/shelf/${one.paths.openId()}`);
    expect(said(two)).toContain('other-tab');
    swing(two, 320);
    allow(two, 0.2);
    expect(said(two)).toContain('apart');
    expect(fragments().toSorted()).toEqual([linkOf(one), linkOf(two)].toSorted());
    expect(names().filter((name) => name?.endsWith('(other tab)'))).toHaveLength(1);
    expect(local.getItem(`halfnut/own/${one.paths.openId()}`)).toBeNull();
    expect(local.getItem(`halfnut/own/${two.paths.openId()}`)).toContain('0.2');
    await load(two, '/plan/', { line: one.paths.openId() });
    expect(two.stores.$path.get().facts.swing).toBe(0.32);
  });

  test('a tab that changed nothing takes up the newer answers on its next page', async () => {
    const [one, two] = await twoTabs();
    swing(one, 300);
    await load(two, '/questions/');
    swing(one, 310);
    await load(two, `/plan/#${linkOf(two)}`);
    expect(two.stores.$path.get().facts.swing).toBe(0.31);
    expect(said(two)).toEqual(['newer']);
    swing(two, 320);
    expect(records()).toHaveLength(1);
  });

  test('a path taken away in one tab goes on in the other', async () => {
    const [one, two] = await twoTabs();
    swing(one, 300);
    await load(two, '/questions/');
    turnTo(one);
    one.paths.remove(one.paths.openId());
    expect(records()).toHaveLength(0);
    swing(two, 320);
    expect(fragments()).toEqual([linkOf(two)]);
    turnTo(one);
    expect(one.paths.undoRemove()).toBe(true);
    expect(records()).toHaveLength(2);
  });

  test('work written over by a tab that had not seen it is kept beside it as soon as that is heard', async () => {
    const [one, two] = await twoTabs();
    swing(one, 300);
    await load(two, '/questions/');
    const key = `halfnut/shelf/${one.paths.openId()}`;
    const seen = local.getItem(key)!;
    swing(one, 310);
    local.setItem(key, seen);
    swing(two, 320);
    hear(one, key);
    expect(fragments().toSorted()).toEqual([linkOf(one), linkOf(two)].toSorted());
    expect(said(one)).toContain('apart');
  });

  test('a new name in one tab does not part the paths', async () => {
    const [one, two] = await twoTabs();
    swing(one, 300);
    await load(two, '/questions/');
    turnTo(one);
    one.paths.rename(one.paths.openId(), 'Garage');
    swing(two, 320);
    expect(names()).toEqual(['Garage']);
    expect(said(two)).not.toContain('apart');
  });
});

describe('a device without room', () => {
  test('does not lose what stands in the address when the next page opens', async () => {
    const tab = await newTab();
    swing(tab, 300);
    local.isFull = true;
    swing(tab, 310);
    expect(said(tab)).toContain('storage');
    await load(tab, `/questions/#${linkOf(tab)}`);
    expect(tab.stores.$path.get().facts.swing).toBe(0.31);
    expect(said(tab)).toContain('storage');
    local.isFull = false;
    swing(tab, 320);
    expect(fragments()).toEqual([linkOf(tab)]);
    expect(said(tab)).toEqual([]);
  });
});
