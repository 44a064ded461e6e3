import { describe, expect, it } from 'vitest';
import { isPath } from '../../src/link/is-path.ts';
import {
  isAmount,
  isCurrency,
  isId,
  readDay,
  readNumber,
  readWithin,
  writeDay,
} from '../../src/link/written.ts';

describe('what stands in a link', () => {
  it.each([
    ['12', 12],
    ['-12.5', -12.5],
    ['12.', 12],
    ['.25', 0.25],
    ['1e3', 1000],
    ['1E-3', 0.001],
    ['1e+12', 1e12],
  ])('%s is a number', (text, value) => expect(readNumber(text)).toBe(value));

  it.each(['', '.', '-', 'x1', '1x', ' 1', '1,5', '+1', '1e', '1e1234', '0x10', '.x', 'Infinity', 'NaN'])(
    '“%s” is no number',
    (text) => expect(readNumber(text)).toBeUndefined(),
  );

  it('keeps to its limits, both ends counted', () => {
    expect(['0', '1', '-0.001', '1.001', 'x', ''].map((text) => readWithin(text, 0, 1))).toEqual([
      0,
      1,
      ...Array(4).fill(undefined),
    ]);
  });

  it('is a day only where the calendar has it', () => {
    expect(readDay('20280229')).toBe('2028-02-29');
    expect(readDay(writeDay('2027-01-03'))).toBe('2027-01-03');
    for (const none of ['', '20270229', '20271301', '120270103', '202701031', 'x20270103', '2027-01-03'])
      expect(readDay(none)).toBeUndefined();
  });

  it('is an id of small letters and figures, sixty at the most', () => {
    for (const text of ['a', 'ball-screw-12', 'a'.repeat(60)]) expect(isId(text)).toBe(true);
    for (const text of ['', 'A', 'a--b', '-a', 'a-', 'a b', '__proto__', 'a'.repeat(61)])
      expect(isId(text)).toBe(false);
  });

  it('is money as it was typed', () => {
    for (const text of ['0', '12', '12.50', '999999999999', '0.12345678']) expect(isAmount(text)).toBe(true);
    for (const text of ['', '-1', '1,50', '.5', '1.', '1e3', 'x1', '1234567890123', '0.123456789'])
      expect(isAmount(text)).toBe(false);
    expect(['EUR', 'EURO', 'XEUR', 'eur', 'EU', '', '1EUR'].map(isCurrency)).toEqual([
      true,
      ...Array(6).fill(false),
    ]);
  });

  it('is a path where a version and its mark stand first', () => {
    for (const text of ['1?size=small', '#1?', '#12?a=b']) expect(isPath(text)).toBe(true);
    for (const text of ['', '#', 'checks', '#check-1?x', '?1', 'a1?', '1=2?', '##1?'])
      expect(isPath(text)).toBe(false);
  });
});
