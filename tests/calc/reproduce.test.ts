// The method of the builds against the trade's own sums as they stood before correction, with the flat allowance.
import { describe, expect, test } from 'vitest';
import type { Band } from '../../src/calc/core/band.ts';
import { quantile, sortColumn } from '../../src/calc/cost/columns.ts';
import { drawBand } from '../../src/calc/cost/edition.ts';
import { pertByScore } from '../../src/calc/cost/pert.ts';
import { BUILDS, stratifiedScores } from '../../src/calc/cost/strata.ts';
import { currentEdition } from '../../src/content/edition.ts';
import before from '../data/sums-before-correction.json' with { type: 'json' };

type Row = (typeof before.rows)[number];
const seed = currentEdition.seed;
const market = stratifiedScores(seed, 'market');
const share = (name: string, band: number[]): Float64Array =>
  stratifiedScores(seed, name).map(pertByScore(band as unknown as Band));
const landed = share('landed flat', before.landed);
const allowance = share('allowance', before.allowance);
const parts = before.parts as unknown as Record<string, { price: Band; scaled: boolean }>;

function linesOf(row: Row): [part: string, qty: number][] {
  const owned = new Set<string>(row.owned);
  return Object.entries(row.lines as unknown as Record<string, number>).filter(([part]) => !owned.has(part));
}

const factor = (row: Row, part: string): number =>
  parts[part]!.scaled ? before.sizeFactor[row.size as 'small'] : 1;

function total(row: Row): Float64Array {
  const sum = new Float64Array(BUILDS);
  for (const [part, qty] of linesOf(row)) {
    const column = drawBand(seed, `part ${part}`, parts[part]!.price, market);
    const times = (qty * factor(row, part)) / 100;
    column.forEach((cents, build) => {
      sum[build]! += times * cents;
    });
  }
  return sum.map((goods, build) => goods * (1 + landed[build]!) * (1 + allowance[build]!));
}

describe('sums before correction, flat allowance', () => {
  test.each(before.rows)('$path, $size, owned $owned.length', (row) => {
    const sums = [0, 1, 2].map((end) =>
      linesOf(row).reduce((sum, [part, qty]) => sum + qty * factor(row, part) * parts[part]!.price[end]!, 0),
    );
    sums.forEach((sum, end) => {
      expect(Math.abs(sum - row.sums[end]!)).toBeLessThanOrEqual(1);
    });
    const sorted = sortColumn(total(row));
    for (const [p, printed] of [
      [0.1, row.p10],
      [0.5, row.p50],
      [0.9, row.p90],
    ] as const) {
      expect(Math.abs(quantile(sorted, p) / printed - 1), `P${100 * p}`).toBeLessThan(0.07);
    }
  });
});
