import { atom } from 'nanostores';
import type { Check } from '../../calc/core/check.ts';
import { recall, remember } from '../memory.ts';

/** Why an owner goes on although a check says stop, and the figures that it said so on. */
export interface Acceptance {
  readonly because: string;
  readonly value: number;
  readonly limit: number;
}

type Acceptances = Readonly<Record<string, Acceptance>>;

/** What the owner accepted, by check. It stays on this device: a link carries answers, not excuses. */
export const $accepted = atom<Acceptances>({});

const REMEMBERED = 'accepted';

/** Nothing makes up for a check that keeps people from harm. */
export const mayAccept = ({ harm, result }: Check): boolean => result === 'stop' && !harm;

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
  'value' in read &&
  typeof read.value === 'number' &&
  'limit' in read &&
  typeof read.limit === 'number';

const figuresOf = ({ value, limit }: Check): Omit<Acceptance, 'because'> => ({
  value: value?.value ?? 0,
  limit: limit?.value ?? 0,
});

/** Accepts a check as it stands; without a reason the acceptance is taken back. False when this browser keeps nothing. */
export function accept(check: Check, because: string): boolean {
  const { [check.id]: _, ...others } = $accepted.get();
  const reason = because.trim();
  const accepted =
    reason === '' ? others : { ...others, [check.id]: { because: reason, ...figuresOf(check) } };
  $accepted.set(accepted);
  return remember(REMEMBERED, JSON.stringify(accepted));
}

/** As good as the same figure: half a percent. */
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * Math.abs(b);

/** A reason stands only for the figures it was written for: another path, or a change of this one, asks for it anew. */
export function stillStands(check: Check, { value, limit }: Acceptance): boolean {
  const now = figuresOf(check);
  return alike(now.value, value) && alike(now.limit, limit);
}
