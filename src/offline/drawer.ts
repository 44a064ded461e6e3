import { CHUNKS, type Files, nameOf, toDrop, toFetch } from './choose.ts';

/** Two at a time, so that whoever reads on is not kept waiting. */
const AT_A_TIME = 2;
/** Where the list itself lies in the drawer: no file of the site has a name without a hash. */
const LIST = '?list';
/** True of the file on its way, not of what is kept. */
const OF_THE_WAY = ['content-encoding', 'content-length', 'transfer-encoding'];

const asHex = (bytes: ArrayBuffer): string =>
  [...new Uint8Array(bytes, 0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** What is kept of the site at `base`, a whole address that ends with a stroke. */
export class Drawer {
  readonly #base: string;
  readonly #files: Files;

  constructor(base: string, files: Files) {
    this.#base = base;
    this.#files = files;
  }

  get #name(): string {
    return `halfnut ${new URL(this.#base).pathname}`;
  }

  async #names(cache: Cache): Promise<Set<string>> {
    const names = (await cache.keys()).map(({ url }) => url.slice(this.#base.length));
    return new Set(names.filter((name) => name !== LIST));
  }

  /** Fetches one file and keeps it; refused where it is not the file of this list, as when a new copy is being put up. */
  async #take(cache: Cache, address: string): Promise<void> {
    // A chunk never changes under its name: what the page has fetched already will do.
    const cached = address.startsWith(CHUNKS) ? 'default' : 'no-cache';
    const response = await fetch(this.#base + address, { cache: cached, priority: 'low' });
    const body = await response.arrayBuffer();
    const hash = asHex(await crypto.subtle.digest('SHA-256', body));
    if (!response.ok || hash !== this.#files[address]) throw new Error(`${address} is of another copy`);
    const headers = new Headers(response.headers);
    for (const name of OF_THE_WAY) headers.delete(name);
    await cache.put(this.#base + nameOf(address, this.#files), new Response(body, { headers }));
  }

  /** Fetches what is not there yet. What was fetched stays, so that a broken connection costs nothing twice. */
  async fill(): Promise<void> {
    const cache = await caches.open(this.#name);
    const next = toFetch(this.#files, await this.#names(cache)).values();
    const hand = async () => {
      for (const address of next) await this.#take(cache, address);
    };
    // The other hand goes on where one stops, so that as much as can be had is there for the next try.
    const hands = await Promise.allSettled(Array.from({ length: AT_A_TIME }, hand));
    const broken = hands.find(({ status }) => status === 'rejected');
    if (broken?.status === 'rejected') throw broken.reason;
  }

  /** Lets go of what no list asks for; the list before this one counts for as long as pages of it are open. */
  async settle(isOpen: boolean): Promise<void> {
    const cache = await caches.open(this.#name);
    const before = await cache.match(this.#base + LIST);
    const earlier: Files[] = before && isOpen ? [await before.json()] : [];
    const old = toDrop(await this.#names(cache), this.#files, ...earlier);
    await Promise.all(old.map((name) => cache.delete(this.#base + name)));
    await cache.put(this.#base + LIST, Response.json(this.#files));
  }

  /** A file of this list. */
  async find(address: string): Promise<Response | undefined> {
    const cache = await caches.open(this.#name);
    return cache.match(this.#base + nameOf(address, this.#files), { ignoreVary: true });
  }

  /** A file of whichever list. */
  async findEarlier(address: string): Promise<Response | undefined> {
    const cache = await caches.open(this.#name);
    return cache.match(this.#base + address, { ignoreSearch: true, ignoreVary: true });
  }

  async empty(): Promise<void> {
    await caches.delete(this.#name);
  }
}
