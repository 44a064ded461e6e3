import type { State } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { PriceBook } from '../core/price-book.ts';
import { packsToBuy } from '../formulas/buying.ts';
import { parts } from '../trade.ts';
import { quantities, sparesOf } from './bill.ts';

/** Units of one part: what the plan needs, and the spares on top of it. */
export interface Wanted {
  readonly need: number;
  readonly keep: number;
}

const NONE: Wanted = { need: 0, keep: 0 };

interface Kept {
  readonly book: PriceBook;
  readonly masks: Int32Array;
  readonly wanted: readonly Wanted[];
}

/** Bill, builds and risks ask for the same counts: they are kept as long as the choices stay as they were. */
const kept = new WeakMap<State, Kept>();

const sameMasks = (a: Int32Array, b: Int32Array): boolean => a.every((mask, at) => mask === b[at]);

/**
 * What a plan wants of every part, by position. An edition that prices the bare need counts no spares; a part that it
 * does not know is not wanted at all.
 */
export function wantedOf(state: State, machine: Machine, book: PriceBook): readonly Wanted[] {
  const known = kept.get(state);
  if (known?.book === book && sameMasks(known.masks, state.masks)) return known.wanted;
  const wanted = countWanted(state, machine, book);
  kept.set(state, { book, masks: state.masks.slice(), wanted });
  return wanted;
}

function countWanted(state: State, machine: Machine, book: PriceBook): Wanted[] {
  const needs = quantities(state, machine);
  const whole = book.packs === 'whole';
  return parts.map((part, at) => {
    const need = needs[at]!;
    if (need === 0 || !book.parts[part.id]) return NONE;
    return { need, keep: whole ? sparesOf(at, state, machine) : 0 };
  });
}

/** Whole packs that cover so many units. */
export const packsFor = (units: number, pack: number): number =>
  pack === 1 && Number.isInteger(units) ? units : packsToBuy.compute({ need: units, pack });

/** Units that are paid for when so many are still missing: whole packs, where the edition prices them so. */
export function unitsToPay(missing: number, part: string, book: PriceBook): number {
  if (missing <= 0) return 0;
  const pack = book.parts[part]?.pack ?? 1;
  return book.packs === 'whole' ? packsFor(missing, pack) * pack : missing;
}
