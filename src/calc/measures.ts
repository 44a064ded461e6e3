import type { State } from './choices/state.ts';
import type { Look } from './core/figure.ts';
import { designOf } from './design.ts';
import { figures } from './trade.ts';

const designs = new WeakMap<State, { readonly masks: Int32Array; readonly look: Look }>();

const same = (a: Int32Array, b: Int32Array): boolean => a.every((mask, at) => mask === b[at]);

/** The design of a state, kept as long as its choices stay as they were: many rules look at one design. */
export function keptDesignOf(state: State): Look {
  const kept = designs.get(state);
  if (kept && same(kept.masks, state.masks)) return kept.look;
  const look = designOf(state);
  designs.set(state, { masks: state.masks.slice(), look });
  return look;
}

/**
 * A figure of the design for the rules, SI; NaN where it does not arise, so that no comparison holds. Throws on an
 * unknown id, an author's mistake.
 */
export const measure = (state: State, id: string): number =>
  keptDesignOf(state).figure(id)?.value ?? Number.NaN;

export const hasMeasure = (id: string): boolean => figures.some((figure) => figure.id === id);
