import { usual } from '../choices/choose.ts';
import { askedAfter, isAsked, isViolated, touching } from '../choices/exclusions.ts';
import { maskOf, optionsOf, type State } from '../choices/state.ts';
import type { Answer } from '../core/path.ts';
import { BUILDS } from '../cost/strata.ts';
import { firstTried, WAYS, waysOf } from '../cost/ways.ts';
import { decisions } from '../guide.ts';
import { type Deltas, deltasOf } from './deltas.ts';
import { changedTo, type Planned } from './one-change.ts';
import type { Present, WayNow } from './present.ts';

/** Some builds, and what they need more or less than now. */
export interface Slice {
  readonly from: number;
  readonly to: number;
  readonly way: WayNow;
  readonly deltas: Deltas;
}

const related: readonly (readonly number[])[] = decisions.map((_, at) => [
  ...new Set(touching[at]!.flatMap(({ involved }) => involved).filter((other) => other !== at)),
]);

/**
 * Whether the answer in the state at `at` leaves every other question as it is: no rule is broken, none comes or goes,
 * and no open question would rather take another option now. When in doubt, no.
 */
function movesNothingElse(
  state: State,
  at: number,
  given: Int32Array,
  first: (at: number) => number,
): boolean {
  if (touching[at]!.some((exclusion) => isViolated(exclusion, state))) return false;
  if (askedAfter[at]!.some((other) => isAsked(other, state) !== (state.masks[other] !== 0))) return false;
  return related[at]!.every((other) => {
    const mask = state.masks[other]!;
    return mask === 0 || mask === given[other] || (given[other] === 0 && mask === first(other));
  });
}

/** Runs with one answer given otherwise, and puts it back. */
function answering<T>(state: State, at: number, mask: number, run: () => T): T {
  const kept = state.masks[at]!;
  state.masks[at] = mask;
  const result = run();
  state.masks[at] = kept;
  return result;
}

/** The builds under another answer where nothing else moves; undefined as soon as something does. */
function alone(present: Present, at: number, mask: number): Slice[] | undefined {
  const { seed } = present.edition.book;
  const slices: Slice[] = [];
  for (const way of present.ways) {
    const number = Math.floor((way.from * WAYS) / BUILDS);
    // In a way that never asks the question, its answer changes nothing.
    const asked = way.state.masks[at] !== 0;
    const deltas = answering(way.state, at, asked ? mask : 0, () =>
      movesNothingElse(way.state, at, present.given, (other) => firstTried(other, number, seed))
        ? deltasOf(present, way, way.state, [at])
        : undefined,
    );
    if (!deltas) return undefined;
    slices.push({ from: way.from, to: way.to, way, deltas });
  }
  return slices;
}

const changedBetween = (a: State, b: State): number[] =>
  decisions.flatMap((_, at) => (a.masks[at] === b.masks[at] ? [] : [at]));

/** The builds of another path beside the present ones. */
function beside(present: Present, { path, state, status }: Planned): Slice[] {
  const there = waysOf(path, { state, status }, present.edition.book.seed);
  return present.ways.flatMap((way) =>
    there
      .filter(({ from, to }) => from < way.to && way.from < to)
      .map((then) => ({
        from: Math.max(way.from, then.from),
        to: Math.min(way.to, then.to),
        way,
        deltas: deltasOf(present, way, then.state, changedBetween(way.state, then.state)),
      })),
  );
}

/** Another answer: what moves along, and every build under it. */
export interface Otherwise {
  readonly follows: readonly string[];
  readonly slices: readonly Slice[];
}

/** The present path with one question answered otherwise; undefined where the rules forbid it beside the other answers. */
export function otherwise(present: Present, at: number, answer: Answer): Otherwise | undefined {
  const { planned, given } = present;
  const mask = maskOf(decisions[at]!.id, answer);
  const still = answering(planned.state, at, mask, () =>
    movesNothingElse(planned.state, at, given, (other) => usual(other)[0]!),
  );
  const slices = still ? alone(present, at, mask) : undefined;
  if (slices) return { follows: [], slices };
  const change = changedTo(planned, at, answer);
  return change && { follows: change.follows, slices: beside(present, change) };
}

/** The same against the rules: what an answer would do if it stood alone and nothing gave way. */
export function asIfAllowed(present: Present, at: number, answer: Answer): Slice[] {
  const mask = maskOf(decisions[at]!.id, answer);
  return present.ways.map((way) => ({
    from: way.from,
    to: way.to,
    way,
    deltas: answering(way.state, at, way.state.masks[at] === 0 ? 0 : mask, () =>
      deltasOf(present, way, way.state, [at]),
    ),
  }));
}

/** What stands for a question now. */
export const standingAt = ({ planned }: Present, at: number): Answer =>
  optionsOf(at, planned.state.masks[at]!);
