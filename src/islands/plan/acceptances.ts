import { atom } from 'nanostores';
import type { Check } from '../../calc/core/check.ts';
import { recall, remember } from '../memory.ts';

/** Why an owner goes on although a check says stop, and how bad it stood when that was written. */
export interface Acceptance {
  readonly because: string;
  readonly margin: number;
}

type Acceptances = Readonly<Record<string, Acceptance>>;

/** What the owner accepted, by check. It stays on this device: a link carries answers, not excuses. */
export const $accepted = atom<Acceptances>({});

const REMEMBERED = 'accepted';

/** Checks that keep people from harm, the stop circuit first of all: no reason makes up for them. */
const NEVER: ReadonlySet<string> = new Set([
  'stop-grade',
  'watchdog',
  'stop-table',
  'drive-discharged',
  'second-earth',
  'earth-leakage',
  'mains-cord',
  'chuck-speed',
  'program-speed-clamp',
  'nose-torque',
]);

export const mayAccept = ({ id, result }: Check): boolean => result === 'stop' && !NEVER.has(id);

/** Takes up what this device remembers; what cannot be read is left out. */
export function loadAcceptances(): void {
  $accepted.set(readAcceptances(recall(REMEMBERED)));
}

function readAcceptances(text: string | undefined): Acceptances {
  try {
    const read: unknown = JSON.parse(text ?? '{}');
    if (typeof read !== 'object' || read === null) return {};
    return Object.fromEntries(
      Object.entries(read).filter((entry): entry is [string, Acceptance] => isOne(entry[1])),
    );
  } catch {
    return {};
  }
}

const isOne = (read: unknown): boolean =>
  typeof read === 'object' &&
  read !== null &&
  'because' in read &&
  typeof read.because === 'string' &&
  'margin' in read &&
  typeof read.margin === 'number';

/** Accepts a check as it stands; without a reason the acceptance is taken back. False when this browser keeps nothing. */
export function accept({ id, margin = 0 }: Check, because: string): boolean {
  const { [id]: _, ...others } = $accepted.get();
  const reason = because.trim();
  const accepted = reason === '' ? others : { ...others, [id]: { because: reason, margin } };
  $accepted.set(accepted);
  return remember(REMEMBERED, JSON.stringify(accepted));
}

/** The reason stands only while the check is no worse than it was when it was written. */
export const stillStands = ({ margin = 0 }: Check, acceptance: Acceptance): boolean =>
  margin >= acceptance.margin * 0.995;
