import type { Part } from '../calc/core/part.ts';
import type { PriceBook, PriceEntry } from '../calc/core/price-book.ts';
import { rooms } from '../calc/guide.ts';
import { parts } from '../calc/trade.ts';
import { moneyRange, plain } from '../islands/shared/format.ts';
import { spanText } from '../islands/shared/span.ts';

/** Where an edition's page of prices is. */
export const pricePage = (edition: string): string => `prices/${edition}/`;

export const shipNames: Readonly<Record<PriceEntry['ship'], string>> = {
  letter: 'letter, under 0.5 kg',
  parcel: 'parcel, to 5 kg',
  heavy: 'heavy or long parcel',
  freight: 'by freight',
  none: 'bought near by',
};

/** One part as its row on the page of prices says it. */
export interface PriceRow {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly unit: string;
  /** Low, likely and high of one unit, dollars in words. */
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly pack: string;
  readonly days: string;
  readonly ship: string;
  /** True where we are less sure than elsewhere. */
  readonly unsure: boolean;
}

/** Dollars as the edition has them: whole, or to the cent where the edition is that fine. */
export const priceText = (n: number): string => `$${plain(n, 2)}`;

/** A band for reading: tens of dollars where it is wide, whole dollars for what is cheap, cents under a dollar. */
export function bandText(low: number, high: number): string {
  if (high >= 100) return moneyRange(low, high);
  const rounded = (n: number): string => (n < 1 ? n.toFixed(2) : plain(Math.round(n)));
  return low === high ? `$${rounded(low)}` : `$${rounded(low)}–${rounded(high)}`;
}

function rowOf(part: Part, entry: PriceEntry): PriceRow {
  const [low, likely, high] = entry.price;
  const [soon, , late] = entry.leadDays;
  return {
    id: part.id,
    name: part.name,
    note: part.note,
    unit: part.unit,
    low: priceText(low),
    likely: priceText(likely),
    high: priceText(high),
    pack: entry.pack > 1 ? `packs of ${entry.pack}` : 'singly',
    days: late === 0 ? 'at once' : spanText(plain(soon), plain(late)),
    ship: shipNames[entry.ship],
    unsure: entry.basis === 'low-confidence',
  };
}

/** Every band of an edition, by room, in the order of the trade. */
export function priceRooms(book: PriceBook): { id: string; name: string; rows: PriceRow[] }[] {
  return rooms
    .map(({ id, name }) => ({
      id,
      name,
      rows: parts.flatMap((part) => {
        const entry = book.parts[part.id];
        return part.subsystem === id && entry ? [rowOf(part, entry)] : [];
      }),
    }))
    .filter(({ rows }) => rows.length > 0);
}
