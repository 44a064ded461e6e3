import type { State } from '../../choices/state.ts';
import type { Space } from './space.ts';
import type { Term } from './terms.ts';

/** A term that looks at more ways of answering than this is bounded by nothing until more is settled. */
const TOO_MANY = 400;

/**
 * The least that a term can count over every way of settling what is not settled yet. Rules are left aside, so it is
 * never too high. Remembered by what of its scope is settled.
 */
export function lowestTimes({ variables }: Space, state: State, settled: Uint8Array): (term: Term) => number {
  const kept = new Map<Term, Map<string, number>>();

  const least = (term: Term, from: number): number => {
    const { scope } = term;
    let place = from;
    while (place < scope.length && settled[scope[place]!] === 1) place += 1;
    if (place === scope.length) return term.times(state);
    const { at, possible } = variables[scope[place]!]!;
    const mask = state.masks[at]!;
    let lowest = Number.POSITIVE_INFINITY;
    for (const each of possible) {
      state.masks[at] = each;
      lowest = Math.min(lowest, least(term, place + 1));
    }
    state.masks[at] = mask;
    return lowest;
  };

  const isTooMuch = ({ scope, kind }: Term): boolean => {
    const ways = scope.reduce(
      (product, index) => product * (settled[index] ? 1 : variables[index]!.possible.length),
      1,
    );
    return ways > TOO_MANY && kind !== 'plain';
  };

  return (term) => {
    let key = '';
    for (const index of term.scope)
      key += settled[index] === 1 ? `${state.masks[variables[index]!.at]},` : '?';
    const own = kept.get(term) ?? new Map<string, number>();
    kept.set(term, own);
    const known = own.get(key);
    if (known !== undefined) return known;
    const found = isTooMuch(term) ? 0 : least(term, 0);
    own.set(key, found);
    return found;
  };
}
