// What a device keeps, against a web that breaks off, and two copies of a site after one another.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Drawer } from '../../src/offline/drawer.ts';
import { hashOf } from '../../src/offline/list.ts';

const BASE = 'https://example.org/shop/';

/** As much of the browser's caches as a drawer uses. */
function fakeCaches() {
  const all = new Map<string, Map<string, Response>>();
  const bare = (url: string) => url.replace(/\?.*/, '');
  const cacheOf = (held: Map<string, Response>) => ({
    keys: async () => [...held.keys()].map((url) => ({ url })),
    put: async (url: string, response: Response) => void held.set(url, response),
    delete: async (url: string) => held.delete(url),
    match: async (url: string, how?: { ignoreSearch?: boolean }) =>
      [...held].find(([name]) => (how?.ignoreSearch ? bare(name) === bare(url) : name === url))?.[1].clone(),
  });
  return {
    all,
    delete: async (name: string) => all.delete(name),
    open: async (name: string) => {
      if (!all.has(name)) all.set(name, new Map());
      return cacheOf(all.get(name)!);
    },
  };
}

type Texts = Readonly<Record<string, string>>;
const listOf = (texts: Texts) =>
  Object.fromEntries(Object.entries(texts).map(([at, text]) => [at, hashOf(new TextEncoder().encode(text))]));
const drawerOf = (texts: Texts) => new Drawer(BASE, listOf(texts));

let kept = fakeCaches();
let asked: string[] = [];

/** The web holds these files; `broken` of them cannot be had. */
function web(texts: Texts, ...broken: string[]): void {
  asked = [];
  vi.stubGlobal('fetch', async (url: string) => {
    const address = url.slice(BASE.length);
    asked.push(address);
    if (broken.includes(address)) throw new TypeError('no connection');
    const headers = { 'content-type': 'text/html', 'content-encoding': 'br', 'content-length': '3' };
    return new Response(texts[address] ?? 'nothing', { status: address in texts ? 200 : 404, headers });
  });
}

const held = () => [...(kept.all.get('halfnut /shop/') ?? [])].map(([url]) => url.slice(BASE.length)).sort();
const named = (texts: Texts) => Object.entries(listOf(texts)).map(([at, hash]) => `${at}?${hash}`);

beforeEach(() => {
  kept = fakeCaches();
  vi.stubGlobal('caches', kept);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

const first = { '': 'home', 'plan/': 'plan', '_astro/a.1.js': 'one' };
const second = { '': 'home', 'plan/': 'plan, newer', '_astro/a.2.js': 'two' };

test('everything is kept, and is found as it was', async () => {
  web(first);
  const drawer = drawerOf(first);
  await drawer.fill();
  expect(held()).toEqual(named(first).sort());
  const plan = await drawer.find('plan/');
  expect(await plan?.text()).toBe('plan');
  expect([...(plan?.headers ?? [])]).toEqual([['content-type', 'text/html']]);
});

test('a connection that breaks off costs nothing twice', async () => {
  web(first, '_astro/a.1.js');
  const drawer = drawerOf(first);
  await expect(drawer.fill()).rejects.toThrow('no connection');
  expect(held()).toHaveLength(2);
  web(first);
  await drawer.fill();
  expect(asked).toEqual(['_astro/a.1.js']);
});

test('a file of another copy is refused, and so is one that is not there', async () => {
  web(second);
  await expect(drawerOf(first).fill()).rejects.toThrow('of another copy');
  expect(held().filter((name) => name.startsWith('plan/'))).toEqual([]);
});

test('a newer copy fetches what changed; the older stays while its pages are open, and goes with them', async () => {
  web(first);
  await drawerOf(first).fill();
  await drawerOf(first).settle(false);
  web(second);
  const newer = drawerOf(second);
  await newer.fill();
  expect(asked.sort()).toEqual(['_astro/a.2.js', 'plan/']);
  await newer.settle(true);
  expect(await (await newer.findEarlier('_astro/a.1.js'))?.text()).toBe('one');
  expect(await (await newer.find('plan/'))?.text()).toBe('plan, newer');
  await newer.settle(false);
  expect(held()).toEqual([...named(second), '?list'].sort());
  expect(await newer.findEarlier('_astro/a.1.js')).toBeUndefined();
});

test('an emptied drawer leaves nothing, and no other copy of the site is touched', async () => {
  web(first);
  await drawerOf(first).fill();
  await kept.open('halfnut /');
  await drawerOf(first).empty();
  expect([...kept.all.keys()]).toEqual(['halfnut /']);
});
