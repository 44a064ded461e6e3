// Times of effect strips, swings and search, and how they grow. Part of `npm run bench`.

import { checksOf } from '../src/calc/checks.ts';
import {
  cheapestWay,
  effectsOf,
  effectsOfQuestion,
  type Limit,
  searchNow,
  sideBySide,
  swingsOf,
} from '../src/calc/choosing.ts';
import { comparisonOf, piecesOf, whyDiffer } from '../src/calc/comparing.ts';
import { emptyPath, type Path } from '../src/calc/core/path.ts';
import { fillTotals, newTotals, resolve } from '../src/calc/cost/builds.ts';
import { quantile, sortColumn } from '../src/calc/cost/columns.ts';
import { editionOf } from '../src/calc/cost/edition.ts';
import { planState } from '../src/calc/cost/ways.ts';
import { designOf } from '../src/calc/design.ts';
import { evaluate } from '../src/calc/evaluate.ts';
import { machineOf } from '../src/calc/facts.ts';
import { decisions } from '../src/calc/guide.ts';
import { alternatives } from '../src/content/alternatives.ts';
import { currentEdition as book } from '../src/content/edition.ts';
import { pathOf, referencePaths } from '../src/content/reference-paths.ts';

const row = (name: string, value: number, unit = 'ms'): void =>
  console.log(`${name.padEnd(62)} ${value.toFixed(3).padStart(14)} ${unit}`);

function median(run: (round: number) => void, rounds: number): number {
  for (let round = 0; round < rounds; round += 1) run(round);
  const times = Array.from({ length: rounds }, (_, round) => {
    const from = performance.now();
    run(round);
    return performance.now() - from;
  });
  return times.sort((a, b) => a - b)[rounds >> 1]!;
}

/** What the owner is and has: no choice to search over. */
const given = ['which-lathe', 'condition', 'shop-tools'];

/** Single-answer questions by what they swing: dollars, ten for an hour, and fifty for each check that names them. */
function heaviest(path: Path): string[] {
  const { checks } = evaluate(path, book);
  const named = (id: string): number => checks.filter((check) => check.decisions.includes(id)).length;
  const many = new Set(decisions.filter((decision) => decision.many).map(({ id }) => id));
  return swingsOf(path, book)
    .choices.filter(({ decision }) => !many.has(decision) && !given.includes(decision))
    .map(({ decision, money, hours }) => ({
      decision,
      weight: money.most.by - money.least.by + 10 * (hours.most.by - hours.least.by) + 50 * named(decision),
    }))
    .sort((a, b) => b.weight - a.weight)
    .map(({ decision }) => decision);
}

/** Plain enumeration works out every path like this: totals, quantiles, checks. */
function onePath(path: Path): void {
  const machine = machineOf(path.size, path.facts);
  const { state } = planState(path, machine);
  const totals = newTotals();
  fillTotals(totals, resolve(state, machine, path, editionOf(book)), editionOf(book));
  for (const column of [totals.money, totals.hours, totals.hoursOut]) quantile(sortColumn(column), 0.5);
  checksOf(designOf(state));
}

export function benchChoosing(paths: readonly Path[]): void {
  effectRows(paths);
  compareRows();
  searchRows();
}

function effectRows(paths: readonly Path[]): void {
  const options = effectsOf(paths[0]!, book)
    .flatMap((each) => each.options)
    .filter(({ allowed, now }) => allowed && !now);
  const after = median((round) => void effectsOf(paths[round % paths.length]!, book), 200);
  const cold = median(
    (round) => void effectsOf(pathOf({}, 'medium', { facts: { 'landed-rate': 0.2 + round / 1e4 } }), book),
    60,
  );
  const each = median((round) => void evaluate(paths[round % paths.length]!, book), 60) * options.length;
  row(`effect strips of all questions (${options.length} options), after an answer`, after);
  row('effect strips of all questions, nothing kept', cold);
  row('whole evaluation of each changed path', each);
  row('whole evaluations / strips after an answer', each / after, 'times');
  row('whole evaluations / strips with nothing kept', each / cold, 'times');
  row(
    'strips of one question',
    median((round) => void effectsOf(paths[round % paths.length]!, book, ['control']), 100),
  );
  row(
    'one question in full, checks and risks',
    median(() => void effectsOfQuestion(paths[0]!, book, 'control'), 40),
  );
  row(
    'effect strips, nothing answered (40 ways)',
    median(() => void effectsOf(emptyPath(book.edition), book), 8),
  );
  row(
    'what swings it',
    median(() => void swingsOf(paths[0]!, book), 8),
  );
  row(
    'eighteen alternatives beside it',
    median(() => void sideBySide(paths[0]!, book, alternatives), 8),
  );
}

/** Two ways side by side: the frugal one parts from the reference in eight answers, some of which clash on the way. */
function compareRows(): void {
  const of = (id: string): Path => referencePaths.find((each) => each.id === id)!.path;
  const [reference, frugal, stiff] = [of('reference'), of('frugal'), of('stiff-small-batch')];
  const synchroniser = of('thread-synchroniser-with-cross-feed');
  const bookOf = () => book;
  for (const [a, b, rounds] of [
    [reference, frugal, 40],
    [reference, synchroniser, 4],
    [reference, stiff, 4],
    [reference, emptyPath(book.edition), 1],
  ] as const) {
    const { orders, exact } = whyDiffer(a, b, bookOf);
    row(
      `why they differ, ${piecesOf(a, b).length} pieces, ${exact ? 'every order' : `${orders} orders`}`,
      median(() => void whyDiffer(a, b, bookOf), rounds),
    );
  }
  const four = [reference, frugal, stiff, synchroniser].map((path) => ({ kind: 'path' as const, path }));
  row(
    'four ways side by side, six pairs',
    median(() => void comparisonOf(four, bookOf, alternatives), 20),
  );
}

function searchRows(): void {
  const limits: Limit[] = [{ kind: 'checks' }];
  const path = pathOf({});
  const order = heaviest(path);
  const plain = median(() => onePath(path), 100);
  row('one path by plain enumeration', plain);
  for (const [title, list] of [
    ['', order],
    ['both slides driven, ', order.filter((id) => id !== 'driven-axes')],
  ] as const) {
    for (const free of [6, 8, 10, 12, 14, 17, 20]) searchRow(title, path, list.slice(0, free), limits, plain);
  }
  console.log(`free questions, heaviest first: ${order.slice(0, 20).join(', ')}`);
  row('memory in use', process.memoryUsage().rss / 2 ** 20, 'MB');
}

function searchRow(title: string, path: Path, free: readonly string[], limits: Limit[], plain: number): void {
  let from = performance.now();
  cheapestWay(path, book, { free, limits });
  const cheapest = performance.now() - from;
  from = performance.now();
  let first = 0;
  const found = searchNow(path, book, { free, limits }, ({ cheapest: way }) => {
    if (way && first === 0) first = performance.now() - from;
  })!;
  const all = performance.now() - from;
  console.log(
    `${title}${free.length} free: ${found.legal.toExponential(2)} legal, ${found.nodes} nodes, ${found.visited} looked at, ` +
      `${found.frontier.length} unbeaten; cheapest ${cheapest.toFixed(0)} ms, first result ${first.toFixed(0)} ms, ` +
      `all ${all.toFixed(0)} ms, plain ${((plain * found.legal) / all).toExponential(1)} times that`,
  );
}
