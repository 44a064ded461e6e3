// The same bands drawn the obvious way: independent random numbers, one build at a time. What the stored builds are held against.
import beta from '@stdlib/stats-base-dists-beta';
import type { Band } from '../src/calc/core/band.ts';
import type { Machine } from '../src/calc/core/machine.ts';
import type { Path } from '../src/calc/core/path.ts';
import type { Resolved } from '../src/calc/cost/builds.ts';
import { fillTotals, newTotals } from '../src/calc/cost/builds.ts';
import { quantile, sortColumn } from '../src/calc/cost/columns.ts';
import { type Edition, SHARED } from '../src/calc/cost/edition.ts';
import { normalCdf } from '../src/calc/cost/exact-math.ts';
import { parts, risks, tasks } from '../src/calc/trade.ts';

const CELLS = 4000;
const tables = new Map<string, Float64Array>();

/** Quantiles of a PERT band on a fine even grid of probabilities, from a general library. */
function tableOf([low, likely, high]: Band): Float64Array {
  const key = `${low} ${likely} ${high}`;
  const known = tables.get(key);
  if (known) return known;
  const mode = high > low ? (likely - low) / (high - low) : 0;
  const table = Float64Array.from({ length: CELLS + 1 }, (_, at) =>
    high > low ? low + (high - low) * beta.quantile(at / CELLS, 1 + 4 * mode, 1 + 4 * (1 - mode)) : low,
  );
  tables.set(key, table);
  return table;
}

/** A value of the band for a probability. */
export function drawFrom(band: Band): (p: number) => number {
  const table = tableOf(band);
  return (p) => {
    const place = Math.min(CELLS - 1e-6, Math.max(0, p * CELLS));
    const cell = Math.floor(place);
    return table[cell]! + (place - cell) * (table[cell + 1]! - table[cell]!);
  };
}

/** Standard normal by the polar method, from a seeded generator so that a run can be repeated. */
export function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x45d9f3b);
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x45d9f3b);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
  };
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * scale;
      return x * scale;
    }
  };
}

const gridReach = 6;
const cdfGrid = Float64Array.from({ length: 6001 }, (_, at) => normalCdf(((2 * at) / 6000 - 1) * gridReach));
const cdf = (z: number): number => {
  const place = Math.min(5999.999, Math.max(0, ((z + gridReach) / (2 * gridReach)) * 6000));
  const cell = Math.floor(place);
  return cdfGrid[cell]! + (place - cell) * (cdfGrid[cell + 1]! - cdfGrid[cell]!);
};

const shared = Math.sqrt(SHARED);
const own = Math.sqrt(1 - SHARED);

interface Item {
  readonly draw: (p: number) => number;
  readonly times: number;
}

interface Plain {
  readonly goods: Item[];
  readonly local: Item[];
  readonly credits: Item[];
  readonly work: Item[];
  readonly landed: (p: number) => number;
  readonly risks: {
    money: (p: number) => number;
    hours: (p: number) => number;
    chance: number;
    kind: string;
  }[];
}

function bandOfColumn(edition: Edition, column: Float64Array): Band {
  const found = bandsByColumn(edition).get(column);
  if (!found) throw new Error('a column of the builds has no band');
  return found;
}

const cache = new WeakMap<Edition, Map<Float64Array, Band>>();

function bandsByColumn(edition: Edition): Map<Float64Array, Band> {
  const known = cache.get(edition);
  if (known) return known;
  const map = new Map<Float64Array, Band>();
  for (const size of ['small', 'medium', 'large'] as const) {
    edition.prices(size).forEach((column, at) => {
      const part = parts[at]!;
      const factor = part.scaled ? edition.book.sizeFactor[size] : 1;
      map.set(
        column,
        edition.book.parts[part.id]!.price.map((dollars) => dollars * factor) as unknown as Band,
      );
    });
  }
  edition.hours.forEach((column, at) => {
    map.set(column, tasks[at]!.hours);
  });
  for (const extra of tasks.flatMap((task) => task.extra ?? []))
    map.set(edition.extras.get(extra.id)!, extra.hours);
  cache.set(edition, map);
  return map;
}

function plainOf(way: Resolved, edition: Edition): Plain {
  const items = (terms: Resolved['goods']): Item[] =>
    terms.map(({ column, times }) => ({ draw: drawFrom(bandOfColumn(edition, column)), times }));
  return {
    goods: items(way.goods),
    local: items(way.local),
    credits: items(way.credits),
    work: items([...way.work, ...way.workOut]),
    landed: drawFrom(way.landedBand),
    risks: way.risks.map(({ at, builds }) => ({
      money: drawFrom(risks[at]!.money),
      hours: drawFrom(risks[at]!.hours),
      chance: builds / 2000,
      kind: risks[at]!.kind,
    })),
  };
}

/** Money and hours of `count` plain draws. */
export function drawPlainly(
  way: Resolved,
  edition: Edition,
  count: number,
  seed = 1,
): { money: Float64Array; hours: Float64Array } {
  const plain = plainOf(way, edition);
  const next = normals(seed);
  const money = new Float64Array(count);
  const hours = new Float64Array(count);
  for (let build = 0; build < count; build += 1) {
    const market = next();
    const pace = next();
    const trouble: Record<string, number> = { mechanics: next(), electrics: next() };
    let goods = 0;
    for (const { draw, times } of plain.goods) goods += times * draw(cdf(shared * market + own * next()));
    let total = goods * (1 + plain.landed(cdf(next())));
    for (const { draw, times } of plain.local) total += times * draw(cdf(shared * market + own * next()));
    for (const { draw, times } of plain.credits) total += times * draw(cdf(shared * market + own * next()));
    let time = 0;
    for (const { draw, times } of plain.work) time += times * draw(cdf(shared * pace + own * next()));
    for (const risk of plain.risks) {
      const common = trouble[risk.kind];
      const liability = common === undefined ? next() : shared * common + own * next();
      if (1 - cdf(liability) >= risk.chance) continue;
      const severity = cdf(next());
      total += risk.money(severity);
      time += risk.hours(severity);
    }
    money[build] = total;
    hours[build] = time;
  }
  return { money, hours };
}

/** The obvious loop, for timing: draws, sorts, reads four quantiles. */
export function perDrawLoop(way: Resolved, edition: Edition, count: number): void {
  for (const column of Object.values(drawPlainly(way, edition, count))) {
    const sorted = column.sort();
    for (const p of [0.1, 0.5, 0.8, 0.9]) quantile(sorted, p);
  }
}

/** Largest distance of P10, P50 and P90 of money and hours from plain draws, as a share. */
export function distance(way: Resolved, edition: Edition, count: number, seed = 1): number {
  const totals = newTotals();
  fillTotals(totals, way, edition);
  const plain = drawPlainly(way, edition, count, seed);
  let worst = 0;
  for (const [ours, theirs] of [
    [totals.money, plain.money],
    [totals.hours, plain.hours],
  ] as const) {
    const a = sortColumn(ours);
    const b = theirs.slice().sort();
    for (const p of [0.1, 0.5, 0.9])
      worst = Math.max(worst, Math.abs(quantile(a, p) / 100 / quantile(b, p) - 1));
  }
  return worst;
}

/** Prints the distance for the first paths of the bench. */
export function plainDraws(
  ready: readonly { way: Resolved; path: Path; machine: Machine }[],
  edition: Edition,
  count: number,
): void {
  ready.slice(0, 25).forEach(({ way }, at) => {
    console.log(
      `path ${at}: worst of P10, P50, P90 against ${count} plain draws ${(100 * distance(way, edition, count, at + 1)).toFixed(2)} %`,
    );
  });
}
