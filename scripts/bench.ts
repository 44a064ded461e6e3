// Times of the builds and of a whole report. `npm run bench`; `npm run bench -- --slow` adds the million plain draws.
import { emptyPath, type Path } from '../src/calc/core/path.ts';
import type { Purchase } from '../src/calc/core/purchase.ts';
import { fillTotals, newTotals, resolve } from '../src/calc/cost/builds.ts';
import { quantile, sortColumn, type Term } from '../src/calc/cost/columns.ts';
import { editionOf } from '../src/calc/cost/edition.ts';
import { planState } from '../src/calc/cost/ways.ts';
import { evaluate } from '../src/calc/evaluate.ts';
import { machineOf } from '../src/calc/facts.ts';
import { decisions } from '../src/calc/guide.ts';
import { calendarOf, stagedOrAtOnce, workingOf } from '../src/calc/working.ts';
import { currentEdition } from '../src/content/edition.ts';
import { benchChoosing } from './bench-choosing.ts';
import { perDrawLoop, plainDraws } from './plain-draws.ts';

const book = currentEdition;

function median(times: number[]): number {
  return times.sort((a, b) => a - b)[times.length >> 1]!;
}

/** Median time in milliseconds of `run` over changing inputs, after a warm-up. */
function timed<T>(inputs: readonly T[], run: (input: T) => void, rounds: number): number {
  for (const input of inputs) run(input);
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const from = performance.now();
    run(inputs[round % inputs.length]!);
    times.push(performance.now() - from);
  }
  return median(times);
}

/** Full paths that differ from the reference in one answer each. */
function fullPaths(): Path[] {
  const open = evaluate(emptyPath(book.edition), book);
  const answers = Object.fromEntries(
    open.choices.filter((c) => c.status === 'open').map((c) => [c.decision, c.options]),
  );
  const base = { ...emptyPath(book.edition), answers };
  const changed = decisions
    .filter((decision) => decision.place === 'guide' && answers[decision.id])
    .map((decision) => ({
      ...base,
      answers: { ...answers, [decision.id]: [decision.assume[1] ?? decision.assume[0]!] },
    }));
  return [base, ...changed];
}

/** The same path with the first twenty lines of its bill quoted or bought at three shops. */
function bought(path: Path): Path {
  const lines = evaluate(path, book).bill.once.slice(0, 20);
  const purchases = lines.map(({ part, each }, at): [string, Purchase] => [
    part,
    {
      state: at % 2 === 0 ? 'ordered' : 'quoted',
      price: each[1].toFixed(2),
      seller: `shop ${at % 3}`,
    },
  ]);
  const sellers = { 'shop 0': { freight: '12.50', freeFrom: '300' }, 'shop 1': { abroad: true } };
  return { ...path, purchases: Object.fromEntries(purchases), sellers };
}

const coldFrom = performance.now();
editionOf(book).prices('medium');
const cold = performance.now() - coldFrom;

const edition = editionOf(book);
const paths = fullPaths();
const ready = paths.map((path) => {
  const machine = machineOf(path.size, path.facts);
  return { path, machine, way: resolve(planState(path, machine).state, machine, path, edition) };
});
const columnsOf = (way: (typeof ready)[number]['way']): Term[] => [
  ...way.goods,
  ...way.local,
  ...way.work,
  ...way.workOut,
  ...way.risks.flatMap(({ at }) => [
    { column: edition.risks[at]!.money, times: 1 },
    { column: edition.risks[at]!.hours, times: 1 },
  ]),
];

const builds = timed(
  ready,
  ({ way }) => {
    const totals = newTotals();
    fillTotals(totals, way, edition);
    for (const column of [totals.money, totals.hours, totals.hoursOut]) {
      const sorted = sortColumn(column);
      for (const p of [0.1, 0.5, 0.8, 0.9]) quantile(sorted, p);
    }
  },
  2000,
);

const bare = timed(
  ready.map(({ way }) => columnsOf(way)),
  (terms) => {
    const total = new Float64Array(2000);
    for (const { column, times } of terms) for (let b = 0; b < 2000; b += 1) total[b]! += times * column[b]!;
  },
  2000,
);

const loop = timed(ready, ({ way }) => perDrawLoop(way, edition, 2000), 12);
const whole = timed(paths, (path) => void evaluate(path, book), 400);
const choosing = timed(paths, (path) => void planState(path, machineOf(path.size, path.facts)), 400);
/** With and without purchases by turns, so that a busy machine slows both alike. */
const both = paths.map((path) => [path, bought(path)] as const);
const times: [number[], number[]] = [[], []];
for (let round = 0; round < 800; round += 1) {
  const from = performance.now();
  evaluate(both[(round >> 1) % both.length]![round % 2]!, book);
  if (round >= 2 * both.length) times[round % 2]!.push(performance.now() - from);
}
const [without, withPurchases] = times.map(median) as [number, number];
const nothing = emptyPath(book.edition);
const openBought = timed([bought(nothing)], (path) => void evaluate(path, book), 60);
const openTime = timed([emptyPath(book.edition)], (path) => void evaluate(path, book), 60);

const row = (name: string, value: number, unit = 'ms'): void =>
  console.log(`${name.padEnd(62)} ${value.toFixed(3).padStart(10)} ${unit}`);
row('edition ready, cold', cold);
row(`builds of a full path (${columnsOf(ready[0]!.way).length} columns), median`, builds);
row('bare weighted sum of as many columns', bare);
row('builds / bare sum', builds / bare, 'times');
row('obvious per-draw loop, same bands', loop);
row('per-draw loop / builds', loop / builds, 'times');
row('choose (rules applied)', choosing);
row('whole evaluate, full path', whole);
row('whole evaluate, full path, 20 lines quoted or bought', withPurchases);
row('with purchases / without', withPurchases / without, 'times');
row('whole evaluate, nothing answered (40 ways)', openTime);
row('the same, 20 lines quoted or bought', openBought);

const guide = decisions.filter((decision) => decision.place === 'guide');
for (const count of [10, 20, 30, 40]) {
  const kept = new Set(guide.slice(0, count).map((decision) => decision.id));
  const some = paths.map((path) => ({
    ...path,
    answers: Object.fromEntries(Object.entries(path.answers).filter(([id]) => kept.has(id))),
  }));
  row(
    `evaluate with the first ${count} questions answered`,
    timed(some, (path) => void evaluate(path, book), 60),
  );
}

for (const [name, path] of [
  ['full path', paths[0]!],
  ['nothing answered', nothing],
] as const) {
  row(
    `calendar of the builds, ${name}`,
    timed([path], (one) => void calendarOf(one, book), 7),
  );
  row(
    `how a job stands, ${name}`,
    timed([path], (one) => void workingOf(one, book), 7),
  );
  row(
    `stages against all at once, ${name}`,
    timed([path], (one) => void stagedOrAtOnce(one, book), 5),
  );
}
benchChoosing(paths);

if (process.argv.includes('--slow')) plainDraws(edition, 1_000_000);
