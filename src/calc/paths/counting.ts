import type { State } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { quantityAt, sparesOf } from '../cost/bill.ts';
import { countedChance, isCounted, isHeld, sparePlaces } from '../cost/risks.ts';
import { BUILDS } from '../cost/strata.ts';
import { unitsToPay, type Wanted } from '../cost/wanted.ts';
import { parts, risks } from '../trade.ts';

/** A plan of which single counts are asked. */
export interface Counting {
  readonly state: State;
  readonly machine: Machine;
  readonly path: Path;
  readonly book: PriceBook;
}

const NONE: Wanted = { need: 0, keep: 0 };

function wantedAt(at: number, { state, machine, book }: Counting): Wanted {
  const need = book.parts[parts[at]!.id] ? quantityAt(at, state, machine) : 0;
  if (need === 0) return NONE;
  return { need, keep: book.packs === 'whole' ? sparesOf(at, state, machine) : 0 };
}

/** Units of a part that are paid for, spares and whole packs counted, nothing of it quoted or in the drawer. */
export function unitsAt(at: number, counting: Counting): number {
  const { need, keep } = wantedAt(at, counting);
  return need === 0 ? 0 : unitsToPay(need + keep, parts[at]!.id, counting.book);
}

/** In how many of the 2,000 builds a risk strikes, and in how many its money is paid: none where a spare is held. */
export function strikesAt(at: number, counting: Counting): { builds: number; paid: number } {
  const { state, path } = counting;
  if (!isCounted(risks[at]!)) return { builds: 0, paid: 0 };
  const builds = Math.round(countedChance(at, state, path.chances) * BUILDS);
  const spared = builds > 0 && isSpared(at, counting);
  return { builds, paid: spared ? 0 : builds };
}

const isSpared = (risk: number, counting: Counting): boolean =>
  sparePlaces[risk]!.some(
    (at) => !counting.path.owned.includes(parts[at]!.id) && isHeld(at, wantedAt(at, counting)),
  );
