import type { Alternative, AlternativeRisk, OnceBands } from '../core/alternative.ts';
import type { Band } from '../core/band.ts';
import { pertMean } from '../core/band.ts';
import { type Column, drawBand, type Edition } from '../cost/edition.ts';
import { BUILDS, shuffled, stratifiedScores } from '../cost/strata.ts';

/** Cents, hundredths of an hour and hundredths of a week in each of the 2,000 builds. */
export interface OnceBuilds {
  readonly money: Column;
  readonly hours: Column;
  readonly weeksOut: Column;
}

const drawn = new WeakMap<Edition, Map<string, Column>>();

/**
 * A column of a band by its own name, drawn once for an edition: prices move partly with the market of all other
 * prices, hours with the same builder's pace.
 */
export function columnOf(edition: Edition, name: string, band: Band, moves: 'market' | 'pace'): Column {
  const known = drawn.get(edition) ?? new Map<string, Column>();
  drawn.set(edition, known);
  const key = `${name} ${band.join(' ')}`;
  const found = known.get(key);
  if (found) return found;
  const { seed } = edition.book;
  const column = drawBand(seed, name, band, stratifiedScores(seed, moves));
  known.set(key, column);
  return column;
}

function strike(edition: Edition, { id, chance, money, hours }: AlternativeRisk, sum: OnceBuilds): void {
  const order = shuffled(BUILDS, edition.book.seed, `alternative risk ${id}`);
  const dear = columnOf(edition, `alternative risk money ${id}`, money, 'market');
  const long = columnOf(edition, `alternative risk hours ${id}`, hours, 'pace');
  const struck = Math.round(pertMean(chance) * BUILDS);
  for (let place = 0; place < struck; place += 1) {
    const build = order[place]!;
    sum.money[build]! += dear[build]!;
    sum.hours[build]! += long[build]!;
  }
}

/** What an alternative with bands of its own costs once, in every build; `landed` is the owner's freight, tax and duty. */
export function onceBuilds(
  edition: Edition,
  { id, risks }: Alternative,
  once: OnceBands,
  landed: Column,
): OnceBuilds {
  const money = columnOf(edition, `alternative money ${id}`, once.money, 'market').slice();
  if (once.freighted)
    for (let at = 0; at < BUILDS; at += 1) money[at] = Math.round(money[at]! * (1 + landed[at]!));
  const sum = {
    money,
    hours: columnOf(edition, `alternative hours ${id}`, once.hours, 'pace').slice(),
    weeksOut: columnOf(edition, `alternative weeks ${id}`, once.weeksOut, 'pace').slice(),
  };
  for (const risk of risks) strike(edition, risk, sum);
  return sum;
}
