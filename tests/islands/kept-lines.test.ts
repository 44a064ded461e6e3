import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  $own,
  $ownNotes,
  changeOwn,
  dropDamaged,
  moveOwn,
  openOwn,
  replaceAll,
} from '../../src/islands/kept-lines.ts';
import { $setAside } from '../../src/islands/set-aside.ts';

const KEPT = 'halfnut/own/path';
const kept = () => JSON.parse(localStorage.getItem(KEPT) ?? 'null') as unknown;
const said = () =>
  $ownNotes
    .get()
    .map(({ say }) => say)
    .join('\n');
const part = 'alignment-bar';

const setAllowance = (allowance: number) => changeOwn((own) => ({ ...own, allowance }));
const setChance = (risk: string, chance: number) =>
  changeOwn((own) => ({ ...own, chances: { ...own.chances, [risk]: chance } }));

/** The browser's shelf with one way in or out that fails. */
function failing(way: 'getItem' | 'setItem', fault: string) {
  const shelf = window.localStorage;
  const fail = () => {
    throw new DOMException('no', fault);
  };
  const broken = {
    getItem: (key: string) => shelf.getItem(key),
    setItem: (key: string, text: string) => shelf.setItem(key, text),
    removeItem: (key: string) => shelf.removeItem(key),
    length: shelf.length,
    [way]: fail,
  };
  return vi.spyOn(window, 'localStorage', 'get').mockReturnValue(broken as unknown as Storage);
}

beforeEach(() => localStorage.clear());
afterEach(() => vi.restoreAllMocks());

describe('what an owner types about money', () => {
  test('is kept, and taken up again on the next visit', async () => {
    await openOwn('path');
    replaceAll({
      purchases: { [part]: { state: 'quoted', price: '12.50' } },
      sellers: { 'Corner shop': { freight: '5.00' } },
      currency: { code: 'EUR', perDollar: '0.92' },
      start: '2027-02-01',
    });
    setChance('hidden-wear', 0.25);
    setAllowance(0.1);
    const typed = $own.get();
    await openOwn('path');
    expect($own.get()).toEqual(typed);
    expect($own.get()).toEqual({
      purchases: { [part]: { state: 'quoted', price: '12.50' } },
      sellers: { 'Corner shop': { freight: '5.00' } },
      currency: { code: 'EUR', perDollar: '0.92' },
      chances: { 'hidden-wear': 0.25 },
      allowance: 0.1,
      start: '2027-02-01',
    });
    expect(said()).toBe('');
  });

  test('is taken away again without a trace', async () => {
    await openOwn('path');
    replaceAll({ purchases: { [part]: { state: 'ordered' } }, allowance: 0.1 });
    replaceAll({});
    expect($own.get()).toEqual({});
    expect(kept()).toEqual({ version: 1, own: {} });
  });

  test('is kept apart by the key of its path', async () => {
    await openOwn('bench');
    setAllowance(0.2);
    await openOwn('garage');
    expect($own.get()).toEqual({});
    await openOwn('bench');
    expect($own.get()).toEqual({ allowance: 0.2 });
  });

  test('while the kept text is still being read is put on top of it', async () => {
    localStorage.setItem(KEPT, JSON.stringify({ version: 1, own: { allowance: 0.1 } }));
    const opening = openOwn('path');
    setChance('hidden-wear', 0.5);
    expect($own.get()).toEqual({ chances: { 'hidden-wear': 0.5 } });
    await opening;
    expect($own.get()).toEqual({ allowance: 0.1, chances: { 'hidden-wear': 0.5 } });
    expect(kept()).toEqual({ version: 1, own: $own.get() });
  });

  test('is taken up once when two islands ask at the same time', async () => {
    localStorage.setItem(KEPT, JSON.stringify({ version: 1, own: { allowance: 0.1 } }));
    const [first, second] = [openOwn('path'), openOwn('path')];
    setChance('hidden-wear', 0.5);
    await Promise.all([first, second]);
    expect($own.get()).toEqual({ allowance: 0.1, chances: { 'hidden-wear': 0.5 } });
  });

  test('for a path that was left before it was read does not come up in the next one', async () => {
    localStorage.setItem(KEPT, JSON.stringify({ version: 1, own: { allowance: 0.1 } }));
    await Promise.all([openOwn('path'), openOwn('garage')]);
    expect($own.get()).toEqual({});
  });

  test('from a file replaces everything', async () => {
    await openOwn('path');
    setAllowance(0.1);
    replaceAll({ start: '2027-01-01' });
    expect($own.get()).toEqual({ start: '2027-01-01' });
  });
});

describe('a browser that does not keep', () => {
  test('says that it has no room; figures stay, and the notice goes when there is room again', async () => {
    localStorage.setItem('something', 'else');
    await openOwn('path');
    const spy = failing('setItem', 'QuotaExceededError');
    setAllowance(0.1);
    expect($own.get()).toEqual({ allowance: 0.1 });
    expect(said()).toMatch(/no more room/);
    spy.mockRestore();
    setAllowance(0.2);
    expect(said()).toBe('');
  });

  test.each(['SecurityError', 'QuotaExceededError'])(
    'keeps nothing at all (%s): said, and figures stay',
    async (fault) => {
      await openOwn('path');
      failing('setItem', fault);
      setAllowance(0.1);
      expect($own.get()).toEqual({ allowance: 0.1 });
      expect(said()).toMatch(/keeps nothing/);
    },
  );

  test('throws on reading too: an empty sheet and no fault', async () => {
    localStorage.setItem(KEPT, JSON.stringify({ version: 1, own: { allowance: 0.1 } }));
    failing('getItem', 'SecurityError');
    await openOwn('path');
    expect($own.get()).toEqual({});
  });
});

describe('a damaged store', () => {
  test.each([
    ['half a text', '{"version":1,"own":{"allow'],
    ['a list', '[]'],
    ['a later version', '{"version":2,"own":{}}'],
    ['nothing of ours', '"hello"'],
    ['NUL bytes', '\u0000\u0000'],
  ])('%s is said, set aside and can be dropped', async (_, text) => {
    localStorage.setItem(KEPT, text);
    await openOwn('path');
    expect($own.get()).toEqual({});
    expect(said()).toMatch(/could not be read in whole/);
    expect($setAside.get()).toEqual([text]);
    setAllowance(0.1);
    await openOwn('path');
    expect($own.get()).toEqual({ allowance: 0.1 });
    expect($setAside.get()).toEqual([text]);
    dropDamaged();
    await openOwn('path');
    expect($setAside.get()).toEqual([]);
  });

  test('with one bad entry keeps the others and sets the whole text aside', async () => {
    const purchases = { [part]: { state: 'quoted', price: 'twelve' }, 'trial-stock': { state: 'ordered' } };
    const text = JSON.stringify({ version: 1, own: { purchases, __proto__: null } }).replace(
      '"own":{',
      '"own":{"__proto__":{"x":1},',
    );
    localStorage.setItem(KEPT, text);
    await openOwn('path');
    expect($own.get()).toEqual({ purchases: { 'trial-stock': { state: 'ordered' } } });
    expect(said()).toMatch(/“twelve” cannot be read as “price”/);
    expect($setAside.get()).toEqual([text]);
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });

  test('on a full device is in hand until the page is closed', async () => {
    localStorage.setItem(KEPT, '{');
    failing('setItem', 'QuotaExceededError');
    await openOwn('path');
    expect(said()).toMatch(/until this page is closed/);
    expect($setAside.get()).toEqual(['{']);
  });
});

test('what is in hand goes on under another key, and what stood under the first one stays', async () => {
  await openOwn('path');
  setAllowance(0.1);
  moveOwn('garage');
  setAllowance(0.3);
  expect(kept()).toEqual({ version: 1, own: { allowance: 0.1 } });
  await openOwn('path');
  await openOwn('garage');
  expect($own.get()).toEqual({ allowance: 0.3 });
});

test('what is still being read goes over to another key too', async () => {
  localStorage.setItem(KEPT, JSON.stringify({ version: 1, own: { allowance: 0.1 } }));
  const opening = openOwn('path');
  moveOwn('garage');
  setChance('hidden-wear', 0.5);
  await opening;
  expect($own.get()).toEqual({ allowance: 0.1, chances: { 'hidden-wear': 0.5 } });
  expect(kept()).toEqual({ version: 1, own: { allowance: 0.1 } });
  await openOwn('garage');
  expect($own.get()).toEqual({ allowance: 0.1, chances: { 'hidden-wear': 0.5 } });
});
