import type { Answer } from '../core/path.ts';
import { decisions } from '../guide.ts';
import { isAsked, isViolated, touching } from './exclusions.ts';
import { maskOf, type State } from './state.ts';

export type Status = 'answered' | 'open' | 'clash' | 'not-asked';

/** Option bits to try for an open question, best first. */
export type Preference = (position: number) => readonly number[];

const assumedOrder: readonly (readonly number[])[] = decisions.map((decision) =>
  decision.assume.map((option) => maskOf(decision.id, [option])),
);

/** The order of the trade: the reference option first, then what a careful builder would fall back to. */
export const usual: Preference = (position) => assumedOrder[position]!;

/** How many times an assumed answer may be taken back before the plain order is kept and the clash is shown. */
const PATIENCE = 400;

/** Bits of the owner's answers by position; zero for "not sure yet" and for nothing said. Unknown options are left out. */
export function answerMasks(answers: Readonly<Record<string, Answer>>): Int32Array {
  return Int32Array.from(decisions, (decision) => {
    const given = answers[decision.id] ?? [];
    const valid = given.filter((id) => decision.options.some((option) => option.id === id));
    return maskOf(decision.id, decision.many ? valid : valid.slice(0, 1));
  });
}

/**
 * Fills the state: every answer that can stand, an assumed option for every open question that arises, nothing for
 * the rest. Earlier answers win over later ones; answers win over assumptions wherever they stand.
 */
export function choose(state: State, given: Int32Array, preference: Preference = usual): Status[] {
  const { masks } = state;
  const status: Status[] = [];
  const tried = new Int32Array(decisions.length);
  let patience = PATIENCE;
  masks.set(given);
  for (let at = 0; at < decisions.length; at += 1) {
    status[at] = settle(state, at, given[at]!, preference, tried);
    if (status[at] !== 'open' || masks[at] !== 0) continue;
    const back = patience > 0 ? lastRethinkable(at, status, tried, preference) : -1;
    if (back < 0) {
      masks[at] = lastResort(state, at, preference);
      continue;
    }
    patience -= 1;
    for (let later = back + 1; later <= at; later += 1) {
      tried[later] = 0;
      masks[later] = given[later]!;
    }
    at = back - 1;
  }
  return status;
}

/** Decides one question; an open one that no option fits is left at zero. */
function settle(state: State, at: number, given: number, preference: Preference, tried: Int32Array): Status {
  if (!isAsked(at, state)) {
    state.masks[at] = 0;
    return 'not-asked';
  }
  if (given !== 0 && tried[at] === 0 && stands(state, at, given, true)) return 'answered';
  const options = preference(at);
  for (let next = tried[at]!; next < options.length; next += 1) {
    if (stands(state, at, options[next]!, false)) {
      tried[at] = next + 1;
      return given === 0 ? 'open' : 'clash';
    }
  }
  tried[at] = options.length;
  state.masks[at] = 0;
  if (given !== 0) state.masks[at] = lastResort(state, at, preference);
  return given === 0 ? 'open' : 'clash';
}

/** Squeezed between answers that cannot stand together: the option that lets the earlier of them stand. */
function lastResort(state: State, at: number, preference: Preference): number {
  const options = preference(at);
  const firstToYield = options.map((mask) => earliestYielding(state, at, mask));
  return options[firstToYield.indexOf(Math.max(...firstToYield))]!;
}

/** Position of the first answer that would have to yield to this option; none: past the end. */
function earliestYielding(state: State, at: number, mask: number): number {
  state.masks[at] = mask;
  const yielding = touching[at]!.filter((exclusion) => isViolated(exclusion, state)).map((exclusion) =>
    Math.max(...exclusion.involved),
  );
  return Math.min(decisions.length, ...yielding);
}

/** Sets the option and tells whether the trade allows it beside what is fixed. Answers look only at earlier questions. */
function stands(state: State, at: number, mask: number, earlierOnly: boolean): boolean {
  state.masks[at] = mask;
  return !touching[at]!.some(
    (exclusion) =>
      !(earlierOnly && exclusion.involved.some((other) => other > at)) && isViolated(exclusion, state),
  );
}

/** The latest open question that shares a rule with this one and has an option left to try. */
function lastRethinkable(
  at: number,
  status: readonly Status[],
  tried: Int32Array,
  preference: Preference,
): number {
  const related = new Set(touching[at]!.flatMap((exclusion) => exclusion.involved));
  for (let back = at - 1; back >= 0; back -= 1) {
    if (status[back] === 'open' && related.has(back) && tried[back]! < preference(back).length) return back;
  }
  return -1;
}
