import { atom } from 'nanostores';
import { recall, remember } from './memory.ts';
import type { Units } from './shared/format.ts';

/** The owner's own limits: dollars, hours of work, weeks without the lathe. They stay on this device. */
export interface Limits {
  readonly money?: number;
  readonly hours?: number;
  readonly weeks?: number;
}

export const $units = atom<Units>('metric');
export const $limits = atom<Limits>({});

/** Takes up what this device remembers; what cannot be read is left out. */
export function loadPreferences(): void {
  $units.set(recall('units') === 'inch' ? 'inch' : 'metric');
  $limits.set(readLimits(recall('limits')));
}

export function setUnits(units: Units): void {
  $units.set(units);
  remember('units', units);
}

/** Sets one limit; undefined takes the collar off. */
export function setLimit(name: keyof Limits, value: number | undefined): void {
  const { [name]: _, ...others } = $limits.get();
  const limits = value === undefined ? others : { ...others, [name]: value };
  $limits.set(limits);
  remember('limits', JSON.stringify(limits));
}

function readLimits(text: string | undefined): Limits {
  try {
    const read: unknown = JSON.parse(text ?? '{}');
    if (typeof read !== 'object' || read === null) return {};
    const sound = Object.entries(read).filter(([, value]) => typeof value === 'number' && value > 0);
    return Object.fromEntries(sound.filter(([name]) => ['money', 'hours', 'weeks'].includes(name)));
  } catch {
    return {};
  }
}
