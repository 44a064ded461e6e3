import { beforeEach, describe, expect, it } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { emptyPath } from '../../src/calc/core/path.ts';
import { nothingDone } from '../../src/calc/core/progress.ts';
import { setOffered, takingOffered, withOffered } from '../../src/islands/offered.ts';
import { ownOf } from '../../src/islands/own-part.ts';
import { decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';

const mine: Path = {
  ...emptyPath('2026-12'),
  purchases: { 'spare-fuses': { state: 'quoted', price: '3', seller: 'corner shop', note: 'ask again' } },
  sellers: { 'corner shop': { freight: '4', abroad: false } },
  progress: {
    ...nothingDone,
    done: { 'write-job-list': '2027-01-04' },
    values: { 'bed-wear': [1.2299999999999999e-5] },
    notes: { 'write-job-list': 'on the door' },
  },
};
const sent = (path: Path): Path => decodePath(encodePath(path, { progress: true, prices: true })).path;

describe('what a link carries of prices and ticks', () => {
  beforeEach(() => setOffered({}));

  it('is not another than ours only because notes and names stay out of links', () => {
    setOffered(ownOf(sent(mine)));
    expect(withOffered(mine)).toEqual({ path: mine, differs: false });
  });

  it('is said to be another where a price is', () => {
    const dearer = { ...mine, purchases: { 'spare-fuses': { state: 'quoted' as const, price: '4' } } };
    setOffered(ownOf(sent(dearer)));
    expect(withOffered(mine).differs).toBe(true);
  });

  it('stands where there is nothing of our own, and our notes stay when it is taken', () => {
    setOffered(ownOf(sent(mine)));
    const bare = emptyPath('2026-12');
    expect(withOffered(bare).path).toEqual(sent(mine));
    expect(takingOffered(mine).progress?.notes).toEqual(mine.progress?.notes);
  });
});
