import { Decimal } from 'decimal.js';
import type { State } from '../choices/state.ts';
import { type Band, NOTHING } from '../core/band.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { BillLine } from '../report.ts';
import { parts } from '../trade.ts';
import { quantities, reasons } from './bill.ts';
import { sizedBand } from './edition.ts';

/** Exact product, dollars to the cent. Whole cents a whole number of times need no decimals to be exact. */
export const times = (band: Band, qty: number): Band => {
  const of = (amount: number): number => {
    const cents = Math.round(amount * 100);
    if (Number.isInteger(qty) && cents / 100 === amount) return (cents * qty) / 100;
    return new Decimal(amount).times(qty).toDecimalPlaces(2).toNumber();
  };
  return [of(band[0]), of(band[1]), of(band[2])];
};

/** Exact sum of bands of whole cents, dollars to the cent. */
export function sumOf(bands: readonly Band[]): Band {
  const at = (end: 0 | 1 | 2): number =>
    bands.reduce((cents, band) => cents + Math.round(band[end] * 100), 0) / 100;
  return [at(0), at(1), at(2)];
}

/** Every line of the bill: what, how many, why, and the band of each and of the line. Owned lines cost nothing and stay listed. */
export function billLines(state: State, machine: Machine, path: Path, book: PriceBook): BillLine[] {
  const owned = new Set(path.owned);
  const wanted = quantities(state, machine);
  return parts.flatMap((part, at) => {
    const qty = wanted[at]!;
    if (qty === 0) return [];
    const entry = book.parts[part.id]!;
    const have = owned.has(part.id);
    const each = sizedBand(book, part.id, part.scaled === true, machine.size);
    return [
      {
        part: part.id,
        subsystem: part.subsystem,
        name: part.name,
        note: part.note,
        unit: part.unit,
        qty,
        each,
        line: have ? NOTHING : times(each, qty),
        owned: have,
        credit: part.credit === true,
        yearly: part.yearly === true,
        shopTool: part.shopTool === true,
        reasons: reasons(state, at),
        leadDays: entry.leadDays,
        ship: entry.ship,
        ...(part.spares ? { spares: part.spares } : {}),
        ...(part.inspect ? { inspect: part.inspect } : {}),
      },
    ];
  });
}
