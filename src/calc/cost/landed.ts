import type { State } from '../choices/state.ts';
import type { Band } from '../core/band.ts';
import type { Path } from '../core/path.ts';
import { constant } from './constant.ts';
import type { Column, Edition } from './edition.ts';
import { countryOf } from './rates.ts';

/** Freight, tax and duty as a share of goods that no shop has quoted. */
export interface Landed {
  readonly landed: Column;
  readonly landedBand: Band;
}

/** The owner's own rate where it makes sense, else the band of the country. */
export function landedOf(state: State, path: Path, edition: Edition): Landed {
  const own = path.facts['landed-rate'];
  if (own !== undefined && own >= 0 && own <= 1.5)
    return { landed: constant(own), landedBand: [own, own, own] };
  const country = countryOf(state);
  const landed = edition.landed.get(country);
  const landedBand = edition.book.landed[country];
  if (!landed || !landedBand)
    throw new Error(`edition ${edition.book.edition} has no landed rate for ${country}`);
  return { landed, landedBand };
}
