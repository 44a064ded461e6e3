// The same bands drawn the obvious way: independent random numbers, one build at a time. What the stored builds are held against.
import beta from '@stdlib/stats-base-dists-beta';
import type { Band } from '../src/calc/core/band.ts';
import type { Path } from '../src/calc/core/path.ts';
import type { Resolved } from '../src/calc/cost/builds.ts';
import { fillTotals, newTotals, resolve } from '../src/calc/cost/builds.ts';
import { quantile, sortColumn } from '../src/calc/cost/columns.ts';
import { type Edition, SHARED } from '../src/calc/cost/edition.ts';
import { normalCdf, normalQuantile } from '../src/calc/cost/exact-math.ts';
import { BUILDS } from '../src/calc/cost/strata.ts';
import { planState } from '../src/calc/cost/ways.ts';
import { machineOf } from '../src/calc/facts.ts';
import { parts, risks, tasks } from '../src/calc/trade.ts';
import { pathsToTry } from './paths-to-try.ts';

/** Scores from −6 to 6 in steps of a hundredth: finer than any band is known. */
const REACH = 6;
const STEPS = 100;
const NODES = 2 * REACH * STEPS;
const tables = new Map<string, Float64Array>();

/** Quantiles of a PERT band by normal score, from a general library. */
function tableOf([low, likely, high]: Band): Float64Array {
  const key = `${low} ${likely} ${high}`;
  const known = tables.get(key);
  if (known) return known;
  const mode = high > low ? (likely - low) / (high - low) : 0;
  const table = Float64Array.from({ length: NODES + 1 }, (_, at) =>
    high > low
      ? low + (high - low) * beta.quantile(normalCdf(at / STEPS - REACH), 1 + 4 * mode, 1 + 4 * (1 - mode))
      : low,
  );
  tables.set(key, table);
  return table;
}

type ByScore = (score: number) => number;

/** A value of the band for a normal score. */
export function drawFrom(band: Band): ByScore {
  const table = tableOf(band);
  return (score) => {
    const place = Math.min(NODES - 1e-6, Math.max(0, (score + REACH) * STEPS));
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

const shared = Math.sqrt(SHARED);
const own = Math.sqrt(1 - SHARED);

interface Item {
  readonly draw: ByScore;
  readonly times: number;
}

interface Plain {
  readonly goods: Item[];
  readonly local: Item[];
  readonly credits: Item[];
  readonly work: Item[];
  readonly landed: ByScore;
  readonly risks: {
    money: ByScore;
    hours: ByScore;
    above: number;
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
    risks: way.risks.map(({ at, builds, spared }) => ({
      money: spared ? () => 0 : drawFrom(risks[at]!.money),
      hours: drawFrom(risks[at]!.hours),
      above: normalQuantile(1 - builds / BUILDS),
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
    for (const { draw, times } of plain.goods) goods += times * draw(shared * market + own * next());
    let total = goods * (1 + plain.landed(next()));
    for (const { draw, times } of plain.local) total += times * draw(shared * market + own * next());
    for (const { draw, times } of plain.credits) total += times * draw(shared * market + own * next());
    let time = 0;
    for (const { draw, times } of plain.work) time += times * draw(shared * pace + own * next());
    for (const risk of plain.risks) {
      const common = trouble[risk.kind];
      const liability = common === undefined ? next() : shared * common + own * next();
      if (liability <= risk.above) continue;
      const severity = next();
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

/** A quantile of the builds beside the same quantile of plain draws, with the standard error of the latter. */
export interface Distance {
  readonly what: string;
  readonly ours: number;
  readonly plain: number;
  readonly error: number;
}

/**
 * Standard error of a sample quantile: √(p(1−p)/n) ÷ density there. Serfling, Approximation Theorems of Mathematical
 * Statistics, 1980, section 2.3.3, corollary B. The density is read off the draws one hundredth to either side.
 */
function standardError(sorted: Float64Array, p: number): number {
  const density = 0.02 / (quantile(sorted, p + 0.01) - quantile(sorted, p - 0.01));
  return Math.sqrt((p * (1 - p)) / sorted.length) / density;
}

/** P10, P50 and P90 of money and hours, from the builds and from plain draws. */
export function distances(way: Resolved, edition: Edition, count: number, seed = 1): Distance[] {
  const totals = newTotals();
  fillTotals(totals, way, edition);
  const plain = drawPlainly(way, edition, count, seed);
  return (['money', 'hours'] as const).flatMap((what) => {
    const ours = sortColumn(totals[what]);
    const theirs = plain[what].sort();
    return [0.1, 0.5, 0.9].map((p) => ({
      what: `P${100 * p} of ${what}`,
      ours: quantile(ours, p) / 100,
      plain: quantile(theirs, p),
      error: standardError(theirs, p),
    }));
  });
}

/** One way of answering, as the builds and the plain draws take it. */
export function wayOf(path: Path, edition: Edition): Resolved {
  const machine = machineOf(path.size, path.facts);
  return resolve(planState(path, machine).state, machine, path, edition);
}

/** Prints the worst distance for every path to try. */
export function plainDraws(edition: Edition, count: number): void {
  pathsToTry(edition.book.edition).forEach(({ name, path }, at) => {
    const found = distances(wayOf(path, edition), edition, count, at + 1);
    const worst = Math.max(...found.map(({ ours, plain }) => Math.abs(ours / plain - 1)));
    console.log(`${name}: worst of P10, P50, P90 against ${count} plain draws ${(100 * worst).toFixed(2)} %`);
  });
}
