import { atom } from 'nanostores';
import type { Path } from '../calc/core/path.ts';
import type { Report } from '../calc/evaluate.ts';
import { decodePath } from '../link/decode.ts';
import { reportOf } from './compute.ts';
import type { Receipt } from './receipts.ts';
import { settled } from './settled.ts';
import { showIn } from './shared/currency.ts';

/** The path in hand and what is worked out from it. Screens take them from stores.ts, beside the changes. */

/** The owner's lathe and answers: what the address bar says. */
export const $path = atom<Path>(decodePath('').path);
/** Everything worked out from the path; undefined until the first figures are there. */
export const $report = atom<Report | undefined>(undefined);
/** What each change moved, newest first. */
export const $receipts = atom<readonly Receipt[]>([]);
/** A mistake of ours met while working out the figures; the screens show it in their boundary. */
export const $fault = atom<unknown>(undefined);

let waiting = false;
/** The figures wait for what is kept on this device, so that nothing typed can come before it. */
let ready: Promise<void> = Promise.resolve();

/** Lets the next figures wait for this too. */
export function waitFor(reading: Promise<void>): void {
  ready = reading;
}

/** Puts a path on the screen; whether it is a change to be kept is the caller's matter. */
export function place(path: Path): void {
  showIn(path.currency);
  $path.set(path);
  workOut();
}

/** Has the figures worked out when the page has nothing better to do; changes made meanwhile are taken along. */
function workOut(): void {
  if (waiting) return;
  waiting = true;
  const whenIdle = window.requestIdleCallback ?? ((run: () => void) => window.setTimeout(run, 30));
  whenIdle(
    async () => {
      try {
        await ready;
        await settle();
        $fault.set(undefined);
      } catch (fault) {
        $fault.set(fault);
      }
      waiting = false;
      const isBehind = $report.get()?.path !== $path.get();
      if (isBehind && $fault.get() === undefined) workOut();
    },
    { timeout: 300 },
  );
}

const isSame = (a: Receipt, b: Receipt): boolean => a.pathNow === b.pathNow && a.pathBefore === b.pathBefore;

/** Settles what there is, and again what was changed while the figures were on their way. */
async function settle(): Promise<void> {
  let known = $report.get();
  let path: Path;
  do {
    path = $path.get();
    let found: Awaited<ReturnType<typeof settled>>;
    try {
      found = await settled($receipts.get(), path, known, reportOf);
    } catch (fault) {
      if ($path.get() === path) throw fault;
      continue;
    }
    known = found.report;
    const { receipts } = found;
    $receipts.set($receipts.get().map((each) => receipts.find((receipt) => isSame(receipt, each)) ?? each));
  } while ($path.get() !== path);
  $report.set(known);
}
