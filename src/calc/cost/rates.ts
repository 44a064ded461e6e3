import { decisionPosition, optionsOf, type State } from '../choices/state.ts';
import type { Band } from '../core/band.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook, PriceEntry } from '../core/price-book.ts';
import type { Seller } from '../core/purchase.ts';
import { factById, makesSense } from '../facts.ts';

/** A rate that the owner typed, or a band from memory of the trade; fractions of one. */
export interface Rate {
  readonly own?: number;
  readonly band: Band;
  /** Names the column of the builds that stands in where the owner typed none. */
  readonly name: string;
}

const countryAt = decisionPosition('country');

export const countryOf = (state: State): string =>
  optionsOf(countryAt, state.masks[countryAt]!)[0] ?? 'elsewhere';

/** Sales tax or VAT; common practice, no source: rates change and differ from place to place. */
const taxBands: Readonly<Record<string, Band>> = {
  'united-states': [0, 0.07, 0.1],
  'vat-country': [0.17, 0.2, 0.25],
  elsewhere: [0, 0.1, 0.25],
};

/** Duty on machine parts from abroad; common practice, no source: it changes from month to month. */
const DUTY: Band = [0, 0.06, 0.25];

function ownRate(path: Path, id: string): number | undefined {
  const fact = factById(id)!;
  const value = path.facts[id];
  return value !== undefined && makesSense(fact, value) ? value : undefined;
}

const rateOf = (own: number | undefined, band: Band, name: string): Rate =>
  own === undefined ? { band, name } : { own, band: [own, own, own], name };

export const taxRateOf = (path: Path, country: string): Rate =>
  rateOf(ownRate(path, 'tax-rate'), taxBands[country] ?? taxBands.elsewhere!, `tax ${country}`);

/** Duty of one shop: its own rate, the owner's usual one, or our band; none within the country. */
export function dutyRateOf(path: Path, { abroad, dutyRate }: Seller): Rate {
  if (!abroad) return rateOf(0, DUTY, 'duty');
  const typed =
    dutyRate !== undefined && dutyRate >= 0 && dutyRate <= 1 ? dutyRate : ownRate(path, 'duty-rate');
  return rateOf(typed, DUTY, 'duty');
}

export type Ship = PriceEntry['ship'];

/** From nothing to carry to a pallet. */
const shipOrder: readonly Ship[] = ['none', 'letter', 'parcel', 'heavy', 'freight'];

export const heaviest = (ships: readonly Ship[]): Ship =>
  shipOrder[Math.max(0, ...ships.map((ship) => shipOrder.indexOf(ship)))]!;

/** Dollars for the carriage of one order by the heaviest thing in it; memory of the trade. */
const carriageBands: Readonly<Record<Ship, Band>> = {
  none: [0, 0, 0],
  letter: [0, 4, 8],
  parcel: [8, 13, 20],
  heavy: [18, 32, 55],
  freight: [60, 110, 220],
};

export const carriageBand = (ship: Ship, book: PriceBook): Band =>
  book.carriage?.[ship] ?? carriageBands[ship];
