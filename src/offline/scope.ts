/** As much of a service worker's surroundings as ours uses: the types of pages do not know them. */

interface Waiting extends Event {
  /** Keeps the worker at it until this is done. */
  waitUntil(work: Promise<unknown>): void;
}

export interface Asking extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface Told extends Waiting {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}

export interface Scope {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    claim(): Promise<void>;
    matchAll(which: { includeUncontrolled: boolean }): Promise<readonly unknown[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', heard: (event: Waiting) => void): void;
  addEventListener(kind: 'fetch', heard: (event: Asking) => void): void;
  addEventListener(kind: 'message', heard: (event: Told) => void): void;
}

/** What a page may say to the worker: how much is kept, take over, let everything go. */
export type Order = 'how-much' | 'take-over' | 'let-go';
