// Pinned means unchanged, never right: a figure that moves must move on purpose, and the note says why.
import { expect, test } from 'vitest';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import { evaluate, type Spread } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { referencePaths, usuallyOwned } from '../../src/content/reference-paths.ts';

const [reference] = referencePaths;

const pinned: readonly (readonly [string, Path])[] = [
  ...referencePaths.flatMap(({ id, path }): [string, Path][] => [
    [`${id}, medium`, path],
    [`${id}, medium, usual things owned`, { ...path, owned: usuallyOwned }],
  ]),
  [`${reference!.id}, small`, { ...reference!.path, size: 'small' }],
  [`${reference!.id}, large`, { ...reference!.path, size: 'large' }],
  ...inventedOwners.map(({ id, path }): [string, Path] => [`owner ${id}`, path]),
  ['nothing answered', emptyPath(currentEdition.edition)],
];

const spread = ({ p10, p50, p80, p90 }: Spread): string =>
  [p10, p50, p80, p90].map((value) => value.toFixed(2)).join('  ');

function lineOf([name, path]: readonly [string, Path]): string {
  const { money, hours, weeksOut, bill, order, risks } = evaluate(path, currentEdition);
  const counts = `${bill.once.length} lines, ${order.length} tasks, ${risks.length} risks`;
  return `${name}\n  money ${spread(money)}\n  hours ${spread(hours)}\n  weeks out ${spread(weeksOut)}\n  ${counts}\n`;
}

test('the figures of the reference paths and of the invented owners', async () => {
  await expect(pinned.map(lineOf).join('')).toMatchFileSnapshot('../data/pinned-paths.txt');
});
