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

/** A 32-bit counter-based generator: the same numbers on every machine. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return (mixed ^ (mixed >>> 14)) >>> 0;
  };
}

/** Positions 0 to count-1 in an order that belongs to the seed and the name (Fisher and Yates). */
export function shuffled(count: number, seed: number, name: string): Int32Array {
  const order = new Int32Array(count);
  for (let at = 1; at < count; at += 1) order[at] = at;
  const next = generator(seedOf(seed, name));
  for (let at = count - 1; at > 0; at -= 1) {
    const other = next() % (at + 1);
    const kept = order[at]!;
    order[at] = order[other]!;
    order[other] = kept;
  }
  return order;
}

/** One standard normal score for each build, every stratum of 1/2,000 used once (Latin hypercube). */
export function stratifiedScores(seed: number, name: string): Float64Array {
  const order = shuffled(BUILDS, seed, name);
  const scores = new Float64Array(BUILDS);
  for (let build = 0; build < BUILDS; build += 1) scores[build] = strataScores[order[build]!]!;
  return scores;
}
