// From the trade's sums as they stood to today's figures, step by step. Prints the JSON of src/content/bridge.json.
import type { Band } from '../src/calc/core/band.ts';
import { fillTotals, newTotals, type Resolved } from '../src/calc/cost/builds.ts';
import { quantile, sortColumn } from '../src/calc/cost/columns.ts';
import { drawBand, type Edition, editionOf } from '../src/calc/cost/edition.ts';
import { pertByScore } from '../src/calc/cost/pert.ts';
import { BUILDS, stratifiedScores } from '../src/calc/cost/strata.ts';
import { type BillLine, evaluate } from '../src/calc/evaluate.ts';
import { parts } from '../src/calc/trade.ts';
import { currentEdition } from '../src/content/edition.ts';
import { referencePaths } from '../src/content/reference-paths.ts';
import before from '../tests/data/sums-before-correction.json' with { type: 'json' };
import { wayOf } from './plain-draws.ts';

const { seed } = currentEdition;
const edition = editionOf(currentEdition);
const market = stratifiedScores(seed, 'market');
const oldParts = before.parts as unknown as Record<string, { price: Band }>;
const share = (name: string, band: number[]): Float64Array =>
  stratifiedScores(seed, name).map(pertByScore(band as unknown as Band));
const flatLanded = share('landed flat', before.landed);
const allowance = share('allowance', before.allowance);

/** Their names for the five paths, in our order. */
const theirs = ['middle', 'thread-synchroniser-power-cross', 'frugal', 'standalone', 'stiff'];

function goodsOf(lines: Readonly<Record<string, number>>, priceOf: (part: string) => Band): Float64Array {
  const sum = new Float64Array(BUILDS);
  for (const [part, qty] of Object.entries(lines)) {
    const column = drawBand(seed, `part ${part}`, priceOf(part), market);
    for (let build = 0; build < BUILDS; build += 1) sum[build]! += (qty * column[build]!) / 100;
  }
  return sum;
}

const nameOf = (part: string): string =>
  parts.find(({ id }) => id === (nowNamed[part] ?? part) || id.startsWith(part))?.name ?? part;

const middle = (column: Float64Array): number => Math.round(quantile(sortColumn(column.slice()), 0.5));
const oldPrice = (part: string): Band => oldParts[part]!.price;
const newPrice = (part: string): Band => currentEdition.parts[part]?.price ?? oldPrice(part);

function troubleOf(way: Resolved, at: Edition): Float64Array {
  const totals = newTotals();
  fillTotals(totals, way, at);
  return totals.troubleMoney.map((cents) => cents / 100);
}

/** Once a single entry for both slides, now one for each; and a lot that has a better name today. */
const splitSince = [
  'belt-drive',
  'end-block',
  'nut-housing',
  'clamp-hub',
  'bearings',
  'coupling',
  'sliding-screw',
  'belt-guard',
];
const nowNamed: Readonly<Record<string, string>> = {
  x0: 'drills-and-taps',
  'rear-bracket-stock': 'bracket-stock',
};

const groupOf = (part: string): string =>
  nowNamed[part] ?? splitSince.find((old) => part.startsWith(old)) ?? part;

/** The parts that were added, dropped or counted otherwise, by what they move the sum of likely prices. */
function largest(lines: readonly BillLine[], old: Readonly<Record<string, number>>) {
  const moves = new Map<string, { name: string; likely: number }>();
  const add = (part: string, name: string, likely: number): void => {
    const group = groupOf(part);
    const known = moves.get(group) ?? { name, likely: 0 };
    moves.set(group, { name: known.name, likely: known.likely + likely });
  };
  for (const line of lines) add(line.part, line.name, line.line[1] * (line.credit ? -1 : 1));
  for (const [part, qty] of Object.entries(old)) add(part, nameOf(part), -qty * newPrice(part)[1]);
  return [...moves.values()]
    .map(({ name, likely }) => ({ name, likely: Math.round(likely) }))
    .filter(({ likely }) => Math.abs(likely) >= 10)
    .sort((a, b) => Math.abs(b.likely) - Math.abs(a.likely))
    .slice(0, 10);
}

const bridges = referencePaths.map(({ id, path }, at) => {
  const row = before.rows.find((r) => r.path === theirs[at] && r.size === 'medium' && r.owned.length === 0)!;
  const lines = row.lines as unknown as Record<string, number>;
  const way = wayOf(path, edition);
  const trouble = troubleOf(way, edition);
  const old = goodsOf(lines, oldPrice);
  const repriced = goodsOf(lines, newPrice);
  const with_ = (goods: Float64Array, landed: Float64Array, more: (build: number, sum: number) => number) =>
    middle(goods.map((value, build) => more(build, value * (1 + landed[build]!))));
  const report = evaluate(path, currentEdition);
  return {
    path: id,
    printed: row.p50,
    steps: {
      asTheyStood: with_(old, flatLanded, (build, sum) => sum * (1 + allowance[build]!)),
      landed: with_(old, way.landed, (build, sum) => sum * (1 + allowance[build]!)),
      risks: with_(old, way.landed, (build, sum) => sum + trouble[build]!),
      prices: with_(repriced, way.landed, (build, sum) => sum + trouble[build]!),
      parts: Math.round(report.money.p50),
    },
    largest: largest(report.bill.once, lines),
  };
});

console.log(JSON.stringify(bridges, null, 2));
