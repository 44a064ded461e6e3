import { expect, test } from 'vitest';
import {
  judgementText,
  placesText,
  readingFigure,
  readingLimit,
  readingText,
  readingUnit,
  readingUnitSize,
  spokenReadingUnit,
} from '../../src/islands/shared/reading-text.ts';

test.each([
  [0.000008, 'length', 'metric', '0.008 mm'],
  [0.000008, 'length', 'inch', '0.0003 in'],
  [0.15, 'length', 'metric', '150 mm'],
  [-0.00002, 'length', 'metric', '−0.02 mm'],
  [0.045, 'resistance', 'metric', '0.045 Ω'],
  [200, 'force', 'inch', '200 N'],
  [38.4, 'voltage', 'metric', '38.4 V'],
  [0.02, 'share', 'metric', '2 %'],
  [0.9, 'share', 'metric', '90 %'],
  [100, 'count', 'metric', '100'],
  [1.8, 'seconds', 'metric', '1.8 s'],
  [62, 'temperature', 'inch', '62 °C'],
] as const)('%d as a %s in %s units is "%s"', (value, show, units, said) => {
  expect(readingText(value, show, units)).toBe(said);
});

test('what is typed times the size of the unit is what is kept', () => {
  expect(0.008 * readingUnitSize('length', 'metric')).toBeCloseTo(0.000008, 12);
  expect(1 * readingUnitSize('length', 'inch')).toBe(0.0254);
  expect(90 * readingUnitSize('share', 'metric')).toBeCloseTo(0.9, 12);
  expect(62 * readingUnitSize('temperature', 'metric')).toBe(62);
});

test('a unit is short beside a blank and long for a reader who hears it', () => {
  expect([readingUnit('length', 'inch'), spokenReadingUnit('length', 'inch')]).toEqual(['in', 'inches']);
  expect([readingUnit('count', 'metric'), spokenReadingUnit('seconds', 'metric')]).toEqual(['', 'seconds']);
  expect(readingFigure(0, 'count', 'metric')).toBe('0');
});

test.each([
  [{ show: 'length', atMost: 0.000005 }, 'limit 0.005 mm'],
  [{ show: 'length', atMost: 0.00005, good: 0.00002 }, 'limit 0.05 mm, good to 0.02 mm'],
  [{ show: 'length', atLeast: 0.15 }, 'at least 150 mm'],
  [{ show: 'length', atLeast: 0, atMost: 0.00004 }, '0 to 0.04 mm'],
  [{ show: 'count', atMost: 0 }, 'limit 0'],
  [{ show: 'seconds' }, ''],
] as const)('the limit of %o is said as "%s"', (reading, said) => {
  expect(readingLimit(reading, 'metric')).toBe(said);
});

test('a judgement and a number of places are said in words', () => {
  expect(judgementText('outside')).toBe('outside the limit');
  expect(judgementText('noted')).toBe('noted');
  expect(placesText({ places: 4 })).toBe('4 values');
  expect(placesText({})).toBe('');
});
