// Pinned means unchanged, never right: a figure that moves must move on purpose, and the note says why.
import { expect, test } from 'vitest';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import type { PriceBook } from '../../src/calc/core/price-book.ts';
import { evaluate, type Spread } from '../../src/calc/evaluate.ts';
import { editions } from '../../src/content/edition.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { usuallyOwned } from '../../src/content/usually-owned.ts';

const [reference] = referencePaths;

const pinned: readonly (readonly [string, Path])[] = [
  ...referencePaths.flatMap(({ id, path }): [string, Path][] => [
    [`${id}, medium`, path],
    [`${id}, medium, usual things owned`, { ...path, owned: usuallyOwned }],
  ]),
  [`${reference!.id}, small`, { ...reference!.path, size: 'small' }],
  [`${reference!.id}, large`, { ...reference!.path, size: 'large' }],
  ...inventedOwners.map(({ id, path }): [string, Path] => [`owner ${id}`, path]),
  ['nothing answered', emptyPath(editions[0]!.edition)],
];

const spread = ({ p10, p50, p80, p90 }: Spread): string =>
  [p10, p50, p80, p90].map((value) => value.toFixed(2)).join('  ');

function lineOf([name, path]: readonly [string, Path], book: PriceBook): string {
  const on = { ...path, edition: book.edition };
  const { money, hours, weeksOut, bill, order, risks } = evaluate(on, book);
  const counts = `${bill.once.length} lines, ${order.length} tasks, ${risks.length} risks`;
  return `${name}\n  money ${spread(money)}\n  hours ${spread(hours)}\n  weeks out ${spread(weeksOut)}\n  ${counts}\n`;
}

/** The first edition keeps the file it always had: its figures never move. */
const fileOf = ({ edition }: PriceBook): string =>
  edition === '2026-11' ? '../data/pinned-paths.txt' : `../data/pinned-paths-${edition}.txt`;

test.each(editions.map((book) => [book.edition, book] as const))(
  'the figures of the reference paths and of the invented owners, edition %s',
  async (_, book) => {
    const lines = pinned.map((each) => lineOf(each, book)).join('');
    await expect(lines).toMatchFileSnapshot(fileOf(book));
  },
);
