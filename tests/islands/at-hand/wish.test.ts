import { afterEach, expect, test, vi } from 'vitest';
import { isDear, later, wish } from '../../../src/islands/at-hand/wish.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  localStorage.clear();
  sessionStorage.clear();
});

test.each([
  [undefined, false],
  [{ saveData: false, type: 'wifi', effectiveType: '4g' }, false],
  [{ saveData: true }, true],
  [{ type: 'cellular' }, true],
  [{ effectiveType: 'slow-2g' }, true],
])('megabytes on the connection %o: dear is %s', (connection, dear) => {
  vi.stubGlobal('navigator', { connection });
  expect(isDear()).toBe(dear);
});

test('a wish and "later" are remembered', () => {
  expect([wish(), later()]).toEqual([null, false]);
  wish('no');
  later('yes');
  expect([wish(), later()]).toEqual(['no', true]);
});

test('a browser that keeps nothing still does what is asked at once', () => {
  const refuse = () => {
    throw new DOMException('refused', 'SecurityError');
  };
  vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, clear: () => undefined });
  expect(wish('yes')).toBe('yes');
  expect(wish()).toBeNull();
});
