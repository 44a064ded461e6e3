import { normalQuantile } from './exact-math.ts';

/** Builds in every edition. */
export const BUILDS = 2000;

const strataScores = symmetricScores();

function symmetricScores(): Float64Array {
  const scores = new Float64Array(BUILDS);
  for (let at = 0; at < BUILDS / 2; at += 1) {
    const score = normalQuantile((at + 0.5) / BUILDS);
    scores[at] = score;
    scores[BUILDS - 1 - at] = -score;
  }
  return scores;
}

/** Whole-number mixing of a seed and a name: each column has its own order, whatever other columns exist. */
function seedOf(seed: number, name: string): number {
  let hash = seed ^ 0x9e3779b9;
  for (let at = 0; at < name.length; at += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
    hash ^= hash >>> 15;
  }
  return hash >>> 0;
}

/**
 * Puts the values into an order that belongs to the seed and the name, where they stand (Fisher and Yates with a
 * 32-bit counter-based generator: the same on every machine). The remainder is taken by a division of floats: exact
 * for 32 bits, and several times faster than that of whole numbers.
 */
function shuffle(values: Int32Array | Float64Array, seed: number, name: string): void {
  let state = seedOf(seed, name);
  for (let count = values.length; count > 1; count -= 1) {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    const drawn = (mixed ^ (mixed >>> 14)) >>> 0;
    const other = (drawn - Math.floor(drawn / count) * count) | 0;
    const kept = values[count - 1]!;
    values[count - 1] = values[other]!;
    values[other] = kept;
  }
}

/** Positions 0 to count-1 in an order that belongs to the seed and the name. */
export function shuffled(count: number, seed: number, name: string): Int32Array {
  const order = new Int32Array(count);
  for (let at = 1; at < count; at += 1) order[at] = at;
  shuffle(order, seed, name);
  return order;
}

/** One standard normal score for each build, every stratum of 1/2,000 used once (Latin hypercube). A fresh array. */
export function stratifiedScores(seed: number, name: string): Float64Array {
  const scores = strataScores.slice();
  shuffle(scores, seed, name);
  return scores;
}
