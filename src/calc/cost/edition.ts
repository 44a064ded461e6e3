import type { Band } from '../core/band.ts';
import type { SizeClass } from '../core/machine.ts';
import { toCents } from '../core/money.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Risk } from '../core/risk.ts';
import { parts, risks, tasks } from '../trade.ts';
import { highestFirst } from './columns.ts';
import { scoresToPert } from './pert.ts';
import { BUILDS, stratifiedScores } from './strata.ts';

/**
 * How much of a price or an hour moves together with all the others of its kind: the square of the weight of the
 * shared factor. Judgement; 0.35 reproduces the spread that the trade's own sums showed.
 */
export const SHARED = 0.35;

const sharedWeight = Math.sqrt(SHARED);
const ownWeight = Math.sqrt(1 - SHARED);

/** One number for each of the 2,000 builds, whole cents or hundredths of an hour, so that sums are exact. */
export type Column = Float64Array;

export interface RiskColumns {
  /** Builds in the order in which the risk strikes: with a chance of p the first 2,000 p of them have it. */
  readonly order: Uint16Array;
  /** Each build's place in that order. */
  readonly rank: Uint16Array;
  /** Cents and hundredths of an hour, in the same order. */
  readonly money: Column;
  readonly hours: Column;
  /** Both in one number, money times `BESIDE` plus hours: one sum then adds up the two. */
  readonly both: Column;
}

/** Room for hours beside money in one exact number: 167,000 hours of trouble, and over five million dollars. */
export const BESIDE = 2 ** 24;
const worst = (kind: 'money' | 'hours'): number => risks.reduce((sum, risk) => sum + 100 * risk[kind][2], 0);
if (worst('hours') >= BESIDE || worst('money') >= 2 ** 29 - 1)
  throw new Error('troubles too large to add exactly');

/** Every draw that an edition of prices stands on. Made once; the same on every machine. */
export interface Edition {
  readonly book: PriceBook;
  readonly prices: (size: SizeClass) => readonly Column[];
  /** Parts bought near by, by position. */
  readonly local: readonly boolean[];
  /** Tasks' own hours by position, and extra work by id. */
  readonly hours: readonly Column[];
  readonly extras: ReadonlyMap<string, Column>;
  readonly risks: readonly RiskColumns[];
  /** Freight, tax and duty as a share, by country answer. */
  readonly landed: ReadonlyMap<string, Column>;
}

const editions = new WeakMap<PriceBook, Edition>();

/** The draws of an edition, made at first use and kept. */
export function editionOf(book: PriceBook): Edition {
  const known = editions.get(book);
  if (known) return known;
  const made = drawEdition(book);
  editions.set(book, made);
  return made;
}

/** A part that came after this edition: it is not priced in it, and not listed. */
const NO_PRICE: Column = new Float64Array(BUILDS);

function drawEdition(book: PriceBook): Edition {
  const { seed } = book;
  const market = stratifiedScores(seed, 'market');
  const pace = stratifiedScores(seed, 'pace');
  const base = parts.map(({ id }) =>
    book.parts[id] ? drawBand(seed, `part ${id}`, priceBand(book, id), market) : NO_PRICE,
  );
  const extraWork = tasks.flatMap((task) => task.extra ?? []);
  return {
    book,
    prices: pricesBySize(book, base),
    local: parts.map((part) => book.parts[part.id]?.ship === 'none'),
    hours: tasks.map((task) => drawBand(seed, `task ${task.id}`, task.hours, pace)),
    extras: new Map(
      extraWork.map((extra) => [extra.id, drawBand(seed, `extra ${extra.id}`, extra.hours, pace)]),
    ),
    risks: drawRisks(seed),
    landed: new Map(
      Object.entries(book.landed).map(([country, band]) => [
        country,
        drawShare(seed, `landed ${country}`, band),
      ]),
    ),
  };
}

/** The band of a part; throws when the edition has none, an author's mistake. */
export function priceBand(book: PriceBook, part: string): Band {
  const entry = book.parts[part];
  if (!entry) throw new Error(`edition ${book.edition} has no price for ${part}`);
  return entry.price;
}

/** A column of hundredths (cents, or hundredths of an hour) from a band, moving partly with a shared factor. */
export function drawBand(seed: number, name: string, band: Band, shared: Float64Array): Column {
  const column = stratifiedScores(seed, name);
  share(column, shared);
  return toHundredths(scoresToPert(column, band));
}

/** Own scores made to move partly with a shared factor, in place. */
function share(own: Float64Array, shared: Float64Array): void {
  for (let build = 0; build < BUILDS; build += 1) {
    own[build] = sharedWeight * shared[build]! + ownWeight * own[build]!;
  }
}

function toHundredths(column: Float64Array): Column {
  for (let at = 0; at < column.length; at += 1) column[at] = Math.round(100 * column[at]!);
  return column;
}

const drawShare = (seed: number, name: string, band: Band): Column =>
  scoresToPert(stratifiedScores(seed, name), band);

function pricesBySize(book: PriceBook, base: readonly Column[]): (size: SizeClass) => readonly Column[] {
  const made = new Map<SizeClass, readonly Column[]>([['medium', base]]);
  return (size) => {
    const known = made.get(size);
    if (known) return known;
    const factor = book.sizeFactor[size];
    const sized = base.map((column, at) =>
      parts[at]!.scaled ? column.map((cents) => toCentsFrom(cents, factor)) : column,
    );
    made.set(size, sized);
    return sized;
  };
}

/** Half up on whole cents: the factors have two decimals, so the product of integers is exact. */
const toCentsFrom = (cents: number, factor: number): number =>
  Math.floor((cents * Math.round(factor * 100) + 50) / 100);

/** Band of one unit for a size of lathe, dollars to the cent. */
export function sizedBand(book: PriceBook, part: string, scaled: boolean, size: SizeClass): Band {
  const band = priceBand(book, part);
  if (!scaled) return band;
  const sized = (amount: number): number => toCentsFrom(toCents(amount), book.sizeFactor[size]) / 100;
  return [sized(band[0]), sized(band[1]), sized(band[2])];
}

function drawRisks(seed: number): RiskColumns[] {
  const trouble: Record<Risk['kind'], Float64Array | undefined> = {
    mechanics: stratifiedScores(seed, 'mechanical trouble'),
    electrics: stratifiedScores(seed, 'electrical trouble'),
    other: undefined,
  };
  return risks.map((risk) => drawRisk(seed, risk, trouble[risk.kind]));
}

function drawRisk(seed: number, risk: Risk, trouble: Float64Array | undefined): RiskColumns {
  const liability = stratifiedScores(seed, `risk ${risk.id}`);
  if (trouble) share(liability, trouble);
  const order = highestFirst(liability);
  const rank = new Uint16Array(BUILDS);
  const severity = stratifiedScores(seed, `severity ${risk.id}`);
  const inOrder = new Float64Array(BUILDS);
  for (let place = 0; place < BUILDS; place += 1) {
    rank[order[place]!] = place;
    inOrder[place] = severity[order[place]!]!;
  }
  const hours = toHundredths(scoresToPert(inOrder.slice(), risk.hours));
  const money = toHundredths(scoresToPert(inOrder, risk.money));
  return { order, rank, hours, money, both: beside(money, hours) };
}

function beside(money: Column, hours: Column): Column {
  const both = new Float64Array(BUILDS);
  for (let place = 0; place < BUILDS; place += 1) both[place] = money[place]! * BESIDE + hours[place]!;
  return both;
}
