import { vi } from 'vitest';

/** Two tabs of one browser: one localStorage, an address, a history entry and a sessionStorage each. */

type Stores = typeof import('../../../src/islands/stores.ts');
type KeptPaths = typeof import('../../../src/islands/shelf/kept-paths.ts');
type Opening = typeof import('../../../src/islands/opening.ts');
type Notes = typeof import('../../../src/islands/notes.ts');

/** A storage of our own, which may be full. */
export class Shelf {
  readonly texts = new Map<string, string>();
  isFull = false;
  get length() {
    return this.texts.size;
  }
  key = (at: number): string | null => [...this.texts.keys()][at] ?? null;
  getItem = (name: string): string | null => this.texts.get(name) ?? null;
  removeItem = (name: string): void => void this.texts.delete(name);
  clear = (): void => this.texts.clear();
  setItem = (name: string, text: string): void => {
    if (this.isFull) throw new DOMException('no room', 'QuotaExceededError');
    this.texts.set(name, text);
  };
}

export interface Tab {
  readonly stores: Stores;
  readonly paths: KeptPaths;
  readonly notes: Notes;
  readonly opening: Opening;
  readonly session: Shelf;
  url: string;
  state: unknown;
  readonly listeners: { readonly type: string; readonly heard: (event: unknown) => void }[];
}

export const local = new Shelf();
let present: Tab | undefined;

/** Puts the browser's window in the hands of a tab. */
export function turnTo(tab: Tab): void {
  leave();
  present = tab;
  window.history.replaceState(tab.state, '', tab.url);
}

function leave(): void {
  if (!present) return;
  present.url = window.location.href;
  present.state = window.history.state;
}

const places = { localStorage: () => local, sessionStorage: () => present?.session };

export function mockStorage(): void {
  for (const [name, storage] of Object.entries(places))
    Object.defineProperty(window, name, { configurable: true, get: storage });
}

/** A tab with modules of its own; what its page listens to is called by `fire`. */
export async function newTab(): Promise<Tab> {
  const session = new Shelf();
  const listeners: Tab['listeners'] = [];
  const listen = vi
    .spyOn(window, 'addEventListener')
    .mockImplementation(
      (type: string, heard: unknown) => void listeners.push({ type, heard: heard as never }),
    );
  vi.resetModules();
  const [stores, paths, notes, opening] = await Promise.all([
    import('../../../src/islands/stores.ts'),
    import('../../../src/islands/shelf/kept-paths.ts'),
    import('../../../src/islands/notes.ts'),
    import('../../../src/islands/opening.ts'),
  ]);
  const tab: Tab = { stores, paths, notes, opening, session, listeners, url: '/plan/', state: null };
  turnTo(tab);
  stores.start();
  listen.mockRestore();
  await settle();
  return tab;
}

export const settle = async (): Promise<void> => {
  for (let round = 0; round < 3; round += 1) await new Promise((done) => setTimeout(done, 0));
};

function fire(tab: Tab, type: string, event: unknown): void {
  turnTo(tab);
  for (const each of tab.listeners) if (each.type === type) each.heard(event);
}

/** Loads a page in a tab. */
export async function load(tab: Tab, url: string, state: unknown = null): Promise<void> {
  turnTo(tab);
  tab.url = url;
  window.history.replaceState(state, '', url);
  tab.opening.takeUpAddress();
  await settle();
}

/** Tells a tab that another one changed an entry. */
export const hear = (tab: Tab, key: string): void => fire(tab, 'storage', { key });

export const said = ({ notes }: Tab): string[] => notes.$notes.get().map(({ kind }) => kind);
