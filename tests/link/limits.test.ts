import { describe, expect, it } from 'vitest';
import type { Family } from '../../src/calc/core/family.ts';
import { nothingDone } from '../../src/calc/core/progress.ts';
import { most, sentPrices } from '../../src/link/prices.ts';
import { progressPairs, readProgressPair, sentProgress } from '../../src/link/progress.ts';
import { readPricePair } from '../../src/link/read-prices.ts';

const known = { parts: new Set<string>(), risks: new Set<string>() };
const numbered = (count: number) =>
  Array.from({ length: count }, (_, at) => `p${String(at).padStart(4, '0')}`);
const each = <Value>(ids: readonly string[], value: Value) =>
  Object.fromEntries(ids.map((id) => [id, value] as const));
const family: Family = {
  name: 'knobs',
  piecesPerBatch: 30,
  batchesPerYear: 12,
  byHand: { setUp: 0.5, piece: 0.25 },
  byProgram: { firstSetUp: 2, setUp: 0.4, attended: 0.1 },
};
const familyWords =
  'pieces-30/batches-12/hand-set-up-0.5/hand-piece-0.25/first-set-up-2/set-up-0.4/attended-0.1';

describe('what is written of prices', () => {
  it('is as much as a device keeps, the first by their ids', () => {
    const ids = numbered(501);
    const purchases = each([...ids].reverse(), { state: 'need' } as const);
    expect(Object.keys(sentPrices({ purchases }).purchases!)).toEqual(ids.slice(0, most.orders));
    expect(sentPrices({ families: Array(61).fill(family) }).families).toHaveLength(most.families);
    expect(sentPrices({ purchases: {}, chances: {}, sellers: {}, families: [] })).toEqual({});
  });

  it.each([
    [0, 0],
    [1, 1],
    [1.01, undefined],
    [-0.01, undefined],
    ['0.5', undefined],
    [Number.NaN, undefined],
  ])('is a share from none to all: %s', (allowance, sent) => {
    expect(sentPrices({ allowance: allowance as number }).allowance).toBe(sent);
  });

  it('is no family of parts whose figures cannot be', () => {
    const sent = (change: Partial<Family>) => sentPrices({ families: [{ ...family, ...change }] }).families;
    expect(sent({})).toEqual([{ ...family, name: 'Parts 1' }]);
    expect(sent({ piecesPerBatch: most.quantity, outsidePrice: most.quantity })).toHaveLength(1);
    for (const change of [
      { piecesPerBatch: 0 },
      { piecesPerBatch: most.quantity + 1 },
      { batchesPerYear: Number.NaN },
      { outsidePrice: most.quantity + 1 },
      { byHand: { setUp: most.quantity + 1, piece: 1 } },
      { byProgram: { firstSetUp: 1, setUp: 1, attended: most.quantity + 1 } },
    ])
      expect(sent(change)).toBeUndefined();
  });

  it('names shops by letters, two each where one is not enough', () => {
    const lettersOf = (count: number) =>
      Object.keys(sentPrices({ sellers: each(numbered(count), { freight: '1' }) }).sellers!);
    expect(lettersOf(26).at(-1)).toBe('shop-z');
    expect(lettersOf(27).slice(-2)).toEqual(['shop-az', 'shop-ba']);
    const { purchases, sellers } = sentPrices({
      purchases: { a: { state: 'need', seller: 'corner' }, b: { state: 'need', seller: '' } },
      sellers: { '': { freight: '2' }, ' yard': { freight: '1' } },
    });
    expect(sellers).toEqual({ '!shop-a': { freight: '1' } });
    expect(purchases).toEqual({ a: { state: 'need', seller: 'shop-b' }, b: { state: 'need' } });
  });
});

describe('what is read of prices', () => {
  it('says what is over the limit', () => {
    const risks = new Set(numbered(201));
    const chances = [...risks].map((id) => `${id}:0.5`).join();
    expect(readPricePair('chances', chances, { ...known, risks }).odd).toEqual(['p0200:0.5']);
    const { prices, odd } = readPricePair('families', Array(61).fill(familyWords).join(), known);
    expect([prices.families?.length, prices.families?.[59]?.name, odd]).toEqual([
      60,
      'Parts 60',
      [familyWords],
    ]);
  });

  it('is a family with all of its figures', () => {
    const read = (words: string) => readPricePair('families', words, known).prices.families;
    expect(read(`${familyWords}/shaped`)).toEqual([{ ...family, name: 'Parts 1', shape: 'shaped' }]);
    for (const word of familyWords.split('/'))
      expect(
        read(
          familyWords
            .split('/')
            .filter((each) => each !== word)
            .join('/'),
        ),
      ).toBeUndefined();
    for (const odd of ['x', 'pieces', 'toString-1', '1pieces-30', 'outside-1x', 'outside-1000001'])
      expect(read(`${familyWords}/${odd}`)).toBeUndefined();
  });

  it('is a shop with its terms', () => {
    const read = (words: string) => readPricePair('shops', `shop-a:${words}`, known).prices.sellers;
    expect(read('tax-in-prices/tax-on-carriage/free-from-80')).toEqual({
      'shop-a': { taxIncluded: true, carriageTaxed: true, freeFrom: '80' },
    });
    for (const odd of ['xduty-0.1', 'duty-0.1x', 'carriage', 'rate-0.1'])
      expect(readPricePair('shops', `shop-a:${odd}`, known)).toEqual({ prices: {}, odd: [`shop-a:${odd}`] });
  });

  it.each(['EU:0.9', 'EUR:x', 'EUR:-1', 'EUR', ':0.9', 'EUR:0'])('is no currency in “%s”', (money) =>
    expect(readPricePair('money', money, known)).toEqual({ prices: {}, odd: [money] }),
  );

  it('takes no notice of gaps', () => {
    const read = readPricePair('shops', ',shop-a:abroad,,', known);
    expect(read).toEqual({ prices: { sellers: { 'shop-a': { abroad: true } } }, odd: [] });
  });
});

describe('what is written and read of the work', () => {
  it('is in order, and nothing of what is empty', () => {
    const progress = {
      ...nothingDone,
      done: { b: '2027-01-02', c: '2027-01-04', a: '2027-01-03' },
      values: { a: [] },
      shelf: { a: [] },
    };
    expect(progressPairs(progress)).toEqual([['done', 'a:20270103,b:20270102,c:20270104']]);
    expect(sentProgress(progress)).toMatchObject({ values: {}, shelf: {} });
  });

  it('is twenty values of one reading at the most', () => {
    const values = (count: number) => `a:${Array(count).fill('1').join('/')}`;
    expect(readProgressPair('measured', values(20)).odd).toEqual([]);
    expect(readProgressPair('measured', values(21)).odd).toEqual([values(21)]);
  });

  it('says what is over the limit, and what holds no mark', () => {
    const ids = numbered(401).map((id) => `${id}:1`);
    const { progress, odd } = readProgressPair('spent', ids.join());
    expect([Object.keys(progress.spent!).length, odd]).toEqual([400, ['p0400:1']]);
    expect(readProgressPair('shelf', 'a:,b:dq,c:dd,').odd).toEqual(['a:', 'b:dq']);
    expect(readProgressPair('shelf', 'c:dd').progress).toEqual({ shelf: { c: ['drawing'] } });
  });
});
