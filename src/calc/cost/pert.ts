import type { Band } from '../core/band.ts';
import { exp, ln, normalCdf } from './exact-math.ts';

/** Cells of the tables: enough for about 0.1 % of the band's width. */
const CELLS = 512;
/** The tables run over normal scores from -REACH to REACH; 2,000 stratified draws stay inside. */
const REACH = 5;

const scores = Float64Array.from({ length: CELLS + 1 }, (_, cell) => ((2 * cell) / CELLS - 1) * REACH);
const scoreProbability = scores.map(normalCdf);
const gridPoints = 2 * CELLS;
/** ln(x / (1 - x)) and (1 - x)^4 at the grid points inside 0 and 1: the density is (x / (1 - x))^(4 mode) (1 - x)^4. */
const lnOdds = new Float64Array(gridPoints + 1);
const tail = new Float64Array(gridPoints + 1);
for (let point = 1; point < gridPoints; point += 1) {
  const x = point / gridPoints;
  lnOdds[point] = ln(x / (1 - x));
  tail[point] = (1 - x) * (1 - x) * (1 - x) * (1 - x);
}

const density = new Float64Array(gridPoints + 1);
const tables = new Map<number, Float64Array>();

/**
 * Beta-PERT distribution on 0 to 1 with its mode at `mode`, cumulated by Simpson's rule over CELLS cells.
 * Shapes 1 + 4 mode and 1 + 4 (1 - mode), the usual PERT weights.
 */
function cumulate(mode: number): Float64Array {
  density[0] = mode === 0 ? 1 : 0;
  density[gridPoints] = mode === 1 ? 1 : 0;
  for (let point = 1; point < gridPoints; point += 1) {
    density[point] = exp(4 * mode * lnOdds[point]!) * tail[point]!;
  }
  const cdf = new Float64Array(CELLS + 1);
  for (let cell = 0, point = 0; cell < CELLS; cell += 1, point += 2) {
    cdf[cell + 1] = cdf[cell]! + density[point]! + 4 * density[point + 1]! + density[point + 2]!;
  }
  const all = cdf[CELLS]!;
  for (let cell = 0; cell <= CELLS; cell += 1) cdf[cell]! /= all;
  return cdf;
}

function tableOf(mode: number): Float64Array {
  const known = tables.get(mode);
  if (known) return known;
  const cdf = cumulate(mode);
  const table = new Float64Array(CELLS + 1);
  let cell = 0;
  for (let at = 0; at <= CELLS; at += 1) {
    const p = scoreProbability[at]!;
    while (cell < CELLS - 1 && cdf[cell + 1]! < p) cell += 1;
    const width = cdf[cell + 1]! - cdf[cell]!;
    const share = width > 0 ? (p - cdf[cell]!) / width : 0;
    table[at] = (cell + Math.min(1, Math.max(0, share))) / CELLS;
  }
  tables.set(mode, table);
  return table;
}

/**
 * Every standard normal score of a column gives way to the quantile of a PERT band: score 0 is the median. The constant
 * where low equals high. Scores beyond 5 give the ends. One plain loop without calls, so that it is fast from the start.
 */
export function scoresToPert(column: Float64Array, [low, likely, high]: Band): Float64Array {
  const width = high - low;
  if (width <= 0) return column.fill(low);
  const table = tableOf((likely - low) / width);
  for (let at = 0; at < column.length; at += 1) {
    const place = Math.min(CELLS - 1e-9, Math.max(0, ((column[at]! + REACH) / (2 * REACH)) * CELLS));
    const cell = place | 0;
    const from = table[cell]!;
    column[at] = low + width * (from + (place - cell) * (table[cell + 1]! - from));
  }
  return column;
}

/** The same for one score at a time. */
export const pertByScore =
  (band: Band): ((score: number) => number) =>
  (score) =>
    scoresToPert(Float64Array.of(score), band)[0]!;
