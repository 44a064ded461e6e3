import { atom } from 'nanostores';
import type { Path } from '../calc/core/path.ts';
import type { Report } from '../calc/evaluate.ts';
import { decodePath } from '../link/decode.ts';
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

/** Works the figures out when the page has nothing better to do; changes made meanwhile are taken along. */
function workOut(): void {
  if (waiting) return;
  waiting = true;
  const whenIdle = window.requestIdleCallback ?? ((run: () => void) => window.setTimeout(run, 30));
  whenIdle(
    async () => {
      try {
        const [{ reportOf }] = await Promise.all([import('./compute.ts'), ready]);
        waiting = false;
        settle(reportOf);
        $fault.set(undefined);
      } catch (fault) {
        waiting = false;
        $fault.set(fault);
      }
    },
    { timeout: 300 },
  );
}

function settle(reportOf: (path: Path) => Report): void {
  const { receipts, report } = settled($receipts.get(), $path.get(), $report.get(), reportOf);
  $receipts.set(receipts);
  $report.set(report);
}
