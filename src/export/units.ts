import type { Quantity, Unit } from '../calc/core/quantity.ts';

/** How the workshop says a unit: what the SI value is multiplied by, and the word behind it. */
const said: Partial<Readonly<Record<Unit, readonly [by: number, word: string]>>> = {
  m: [1000, 'mm'],
  'm²': [1e6, 'mm²'],
  'm/s': [60_000, 'mm/min'],
  'm/s²': [1000, 'mm/s²'],
  'm/rev': [1000, 'mm a turn'],
  '1/m': [1e-3, 'for each mm'],
  'rev/s': [60, 'rpm'],
  '1': [1, ''],
};

/** Six figures at most, nine for pulses, which add up over the whole travel; no zeros at the end. */
export function asWords({ value, unit }: Quantity): string {
  const [by, word] = said[unit] ?? [1, unit];
  return `${Number((value * by).toPrecision(unit === '1/m' ? 9 : 6))} ${word}`.trim();
}
