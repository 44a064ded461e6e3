import type { Band } from './band.ts';

/** One part in an edition: dollars for one unit before freight, tax and duty. */
export interface PriceEntry {
  readonly price: Band;
  /** Days from order to door. */
  readonly leadDays: Band;
  /** Sold in packs of this many; 1 when sold singly. */
  readonly pack: number;
  /** letter under 0.5 kg, parcel to 5 kg, heavy to 20 kg or over 600 mm long, freight above, none for services and downloads. */
  readonly ship: 'letter' | 'parcel' | 'heavy' | 'freight' | 'none';
  /** How sure: what the band rests on. */
  readonly basis: 'memory' | 'low-confidence';
}

/** A released edition of prices is never edited: links carry its name and show its figures for ever. */
export interface PriceBook {
  readonly edition: string;
  readonly currency: 'USD';
  readonly date: string;
  /** Said on screen beside every total. */
  readonly basis: string;
  /** Chosen once so that 2,000 builds agree with a million plain draws, then frozen. */
  readonly seed: number;
  /** Share added to goods for freight, tax and duty, by country answer. */
  readonly landed: Readonly<Record<string, Band>>;
  /** Multiplies prices of scaled parts by size of lathe. */
  readonly sizeFactor: { readonly small: number; readonly medium: number; readonly large: number };
  /** "whole": the builds price whole packs, and spares on top of the need. Missing: the bare need, as the first edition did. */
  readonly packs?: 'whole';
  /** Dollars for the carriage of one order, by the heaviest thing in it. */
  readonly carriage?: Readonly<Record<PriceEntry['ship'], Band>>;
  readonly parts: Readonly<Record<string, PriceEntry>>;
}
