import { describe, expect, it } from 'vitest';
import { buyGroups, buyViews, toBuy } from '../../../src/calc/buying.ts';
import type { Path } from '../../../src/calc/core/path.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';

const [reference] = referencePaths;
const plain = evaluate({ ...reference!.path, start: '2027-03-01' }, currentEdition);
const [first, second, third] = toBuy(plain).filter(({ state }) => state === 'need');
const bought: Path = {
  ...plain.path,
  purchases: {
    [first!.part]: { state: 'ordered', price: '120.50', seller: 'Near shop' },
    [second!.part]: { state: 'arrived', price: '80', seller: 'Far shop' },
    [third!.part]: { state: 'quoted', price: '33.33', seller: 'Near shop' },
  },
};
const report = evaluate(bought, currentEdition);

describe('the buy list in groups', () => {
  it.each(buyViews)('laid out by %s holds every line once and its sums are those of the lines', (view) => {
    const groups = buyGroups(report, view, '2027-01-15');
    const parts = groups.flatMap(({ lines }) => lines.map(({ part }) => part));
    expect(parts.toSorted()).toEqual(
      toBuy(report)
        .map(({ part }) => part)
        .toSorted(),
    );
    for (const { lines, sum } of groups) {
      const cents = lines.reduce((total, { line }) => total + Math.round(line[1] * 100), 0);
      expect(Math.round(sum[1] * 100)).toBe(cents);
    }
  });

  it('says first what should be ordered already, and apart what is on the way and what to check', () => {
    const groups = buyGroups(report, 'order', '2027-06-01');
    expect(groups[0]?.id).toBe('late');
    for (const { orderBy } of groups[0]!.lines) expect(orderBy.dates!.likely < '2027-06-01').toBe(true);
    expect(groups.find(({ id }) => id === 'coming')?.lines.map(({ part }) => part)).toEqual([first!.part]);
    expect(groups.find(({ id }) => id === 'check')?.lines.map(({ part }) => part)).toEqual([second!.part]);
  });

  it('counts days from the start where no day is known', () => {
    const { start: _, ...open } = bought;
    const ids = buyGroups(evaluate(open, currentEdition), 'order', '2027-06-01').map(({ id }) => id);
    expect(ids).not.toContain('late');
    expect(ids).toContain('later');
  });

  it('names the shops, and keeps lines without one together', () => {
    const names = buyGroups(report, 'seller', '2027-01-15').map(({ name }) => name);
    expect(names).toEqual(['Far shop', 'Near shop', 'No shop named yet']);
  });
});
