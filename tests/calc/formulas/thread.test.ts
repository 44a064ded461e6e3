import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { threadFeed, threadInfeed, threadRunUp } from '../../../src/calc/formulas/thread.ts';
import { threadLeadError, threadLeadErrorTracked } from '../../../src/calc/formulas/thread-error.ts';

describe('worked by hand, no published source', () => {
  test('1.5 mm pitch at 300 turns a minute and 100 mm/s²: 0.281 mm, with two pitches 3.28 mm', () => {
    const start = { pitch: 0.0015, speed: 5, acceleration: 0.1 };
    expect(threadRunUp.compute({ ...start, sparePitches: 0 }) * 1000).toBeCloseTo(0.281, 3);
    expect(threadRunUp.compute({ ...start, sparePitches: 2 }) * 1000).toBeCloseTo(3.281, 3);
  });

  test('M10 at 500 turns a minute runs at 750 mm/min', () => {
    expect(threadFeed.compute({ pitch: 0.0015, speed: 500 / 60 }) * 60_000).toBeCloseTo(750, 9);
  });

  test('20 mm at 5 % sag comes out 1.053 mm long; with a correction each turn 0.079 mm a turn of 1.5 mm', () => {
    expect(threadLeadError.compute({ length: 0.02, sag: 0.05 }) * 1000).toBeCloseTo(1.053, 3);
    expect(threadLeadError.compute({ length: 0.0015, sag: 0.05 }) * 1000).toBeCloseTo(0.079, 3);
  });

  test('a tenth of sag makes the lead 11.1 % too long', () => {
    expect(threadLeadError.compute({ length: 1, sag: 0.1 })).toBeCloseTo(0.111, 3);
  });

  test('following 1,024 lines at 1.5 mm pitch errs by 0.366 µm', () => {
    expect(threadLeadErrorTracked.compute({ pitch: 0.0015, lines: 1024 }) * 1e6).toBeCloseTo(0.366, 3);
  });
});

describe('infeed of each pass', () => {
  const depth = fc.double({ min: 0.0001, max: 0.005, noNaN: true });
  const count = fc.integer({ min: 2, max: 200 });

  test('the passes add up to the depth', () => {
    fc.assert(
      fc.property(depth, count, (deep, passes) => {
        const infeeds = threadInfeed.compute({ depth: deep, passes });
        expect(infeeds).toHaveLength(passes);
        expect(infeeds.reduce((sum, each) => sum + each, 0) / deep).toBeCloseTo(1, 9);
      }),
    );
  });

  test('from the third pass on each feeds in less than the one before', () => {
    fc.assert(
      fc.property(depth, count, (deep, passes) => {
        const later = threadInfeed.compute({ depth: deep, passes }).slice(2);
        expect(later.every((each, at) => at === 0 || each < later[at - 1]!)).toBe(true);
      }),
    );
  });

  test.each([1, 0, -3, 2.5, 201, Number.NaN, 1e12])('%d passes have no answer', (passes) => {
    expect(threadInfeed.compute({ depth: 0.001, passes })).toEqual([Number.NaN]);
  });
});

test('more sag never makes a smaller lead error', () => {
  const sags = fc.double({ min: 0, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(sags, sags, (one, other) => {
      const error = (sag: number) => threadLeadError.compute({ length: 0.02, sag });
      expect(error(Math.max(one, other))).toBeGreaterThanOrEqual(error(Math.min(one, other)));
    }),
  );
});
