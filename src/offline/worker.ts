import { addressAsked, type Source, sourceOf } from './choose.ts';
import { Drawer } from './drawer.ts';
import type { KeptList } from './list.ts';
import type { Order, Scope } from './scope.ts';

/** Keeps the whole site on the device. The build writes the list of its files in front of this. */
declare const KEPT: KeptList;

const worker = globalThis as unknown as Scope;
const base = worker.registration.scope;
const drawer = new Drawer(base, KEPT.files);

/** What the drawer holds, else what the web says: a browser may have made room for something else. */
async function answer(source: Source, request: Request): Promise<Response> {
  if (source.from === 'elsewhere') return Response.redirect(base + source.to + new URL(request.url).search);
  if (source.from === 'drawer') return (await drawer.find(source.address)) ?? fetch(request);
  if (source.from === 'earlier') return (await drawer.findEarlier(source.address)) ?? fetch(request);
  try {
    return await fetch(request);
  } catch (fault) {
    const said = source.else === undefined ? undefined : await drawer.find(source.else);
    if (said === undefined) throw fault;
    return said;
  }
}

/** Pages of the copy before stay as they are, and whoever opens the next page gets it from this one. */
async function begin(): Promise<void> {
  const open = await worker.clients.matchAll({ includeUncontrolled: true });
  await drawer.settle(open.length > 0);
  await worker.clients.claim();
}

const letGo = async (): Promise<void> => {
  await worker.registration.unregister();
  await drawer.empty();
};

/** What is kept, in bytes; nothing where the browser made room for something else and it cannot be fetched again now. */
const howMuch = (): Promise<number | undefined> =>
  drawer.fill().then(
    () => KEPT.bytes,
    () => undefined,
  );

worker.addEventListener('install', (event) => event.waitUntil(drawer.fill()));
worker.addEventListener('activate', (event) => event.waitUntil(begin()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const address = request.method === 'GET' ? addressAsked(request.url, base) : undefined;
  if (address === undefined) return;
  event.respondWith(answer(sourceOf(address, KEPT.files, request.mode === 'navigate'), request));
});
worker.addEventListener('message', (event) => {
  const order = event.data as Order;
  if (order === 'take-over') event.waitUntil(worker.skipWaiting());
  if (order === 'let-go') event.waitUntil(letGo().then(() => event.ports[0]?.postMessage(0)));
  if (order === 'how-much') event.waitUntil(howMuch().then((bytes) => event.ports[0]?.postMessage(bytes)));
});
