import { offerNewer, say, sayNewer } from './show.ts';
import { isDear, later, onWish, wish } from './wish.ts';
import { FROM_NEXT_PAGE, said } from './words.ts';

/**
 * Keeps the site on the device, says whether it is kept, and offers a newer copy. Fetched by `begin.ts` alone, so it
 * shares nothing with islands; the worker's side is src/offline.
 */
const base = new URL(import.meta.env.BASE_URL.replace(/\/?$/, '/'), window.location.origin).href;
const keeper = navigator.serviceWorker;
/** A page that no worker served has nothing to change over from. */
let isOfACopy = Boolean(keeper.controller);

/** What the worker says to an order; how much is kept, nothing where it is not whole. */
const ask = (worker: ServiceWorker, order: 'how-much' | 'let-go'): Promise<number | undefined> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    worker.postMessage(order, [port2]);
  });

async function offer(): Promise<void> {
  const about = await fetch(`${base}at-hand.json`)
    .then((answer) => answer.json())
    .catch(() => undefined);
  say(said('not-kept', about?.bytes), () => {
    wish('yes');
    say(said('being-kept'));
    void keep();
  });
}

async function drop(worker: ServiceWorker): Promise<void> {
  wish('no');
  await ask(worker, 'let-go');
  await offer();
}

async function sayKept(worker: ServiceWorker): Promise<void> {
  const bytes = await ask(worker, 'how-much');
  if (bytes === undefined) say(said('not-whole'));
  else say(said('kept', bytes), () => void drop(worker));
}

function offerWaiting({ waiting }: ServiceWorkerRegistration): void {
  if (!waiting || later()) return;
  const now = () => {
    isOfACopy = true;
    waiting.postMessage('take-over');
  };
  offerNewer(now, () => later('yes'));
}

/** Follows a worker that is on its way: the first of this device, or one with a newer copy. */
function follow(registration: ServiceWorkerRegistration): void {
  const coming = registration.installing;
  coming?.addEventListener('statechange', () => {
    if (coming.state === 'installed' && registration.active) offerWaiting(registration);
    if (coming.state === 'activated') void sayKept(coming);
    if (coming.state === 'redundant' && !registration.active) say(said('not-whole'));
  });
}

async function keep(): Promise<void> {
  const registration = await keeper.register(`${base}at-hand.js`, { scope: base }).catch(() => undefined);
  if (!registration) return;
  follow(registration);
  registration.addEventListener('updatefound', () => follow(registration));
  if (registration.active) void sayKept(registration.active);
  else say(said('being-kept'));
  if (registration.active) offerWaiting(registration);
}

async function begin(): Promise<void> {
  const known = await keeper.getRegistration(base).catch(() => undefined);
  const isKept = known?.scope === base;
  if (wish() === 'no' || (!isKept && isDear() && wish() !== 'yes')) await offer();
  else await keep();
}

/** The newer copy has taken over, in whichever tab that was asked for. What was typed here is never thrown away. */
function changeOver(): void {
  if (isOfACopy && !('typed' in document.documentElement.dataset)) window.location.reload();
  else if (isOfACopy) sayNewer(FROM_NEXT_PAGE);
  isOfACopy = true;
}

keeper.addEventListener('controllerchange', changeOver);
onWish(() => void begin());
void begin();
