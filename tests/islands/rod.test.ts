import { describe, expect, it } from 'vitest';
import { layoutDimension } from '../../src/islands/shared/DimensionLine.tsx';
import { layoutRod } from '../../src/islands/shared/Rod.tsx';
import { COLLAR_WIDTH, type RodLayout } from '../../src/islands/shared/rod-layout.ts';
import { niceScale } from '../../src/islands/shared/scale.ts';
import { spanText } from '../../src/islands/shared/span.ts';
import { layoutStages } from '../../src/islands/shared/stage-layout.ts';

const MONEY = Array.from({ length: 20 }, (_, i) => 3600 + i * i * 9 + i * 40);
const LUMPY = [5, 5, 5, 6, 6, 6, 6, 8, 8, 9, 9, 9, 10, 12, 12, 14, 20, 21, 40, 80];
const EQUAL = Array.from({ length: 20 }, () => 250);
const NONE = Array.from({ length: 20 }, () => 0);
const WIDTHS = [180, 240, 256, 372, 620];

const sets = { MONEY, LUMPY, EQUAL, NONE };
const cases = Object.entries(sets).flatMap(([name, values]) =>
  WIDTHS.flatMap((width) =>
    [undefined, values[0], values[12], (values[19] ?? 0) + 1, 1e6, -1e6].map((limit) => ({
      name,
      values,
      width,
      limit,
    })),
  ),
);

function numbersIn(rod: RodLayout): number[] {
  const places = [...rod.washers, ...rod.before].flatMap((w) => [w.x, w.row]);
  return [
    ...places,
    ...rod.ticks.flatMap((t) => [t.x, t.value]),
    ...Object.values(rod.half),
    rod.collarX ?? 0,
  ];
}

describe.each(cases)('a rod of $name, $width px wide, limit $limit', ({ values, width, limit }) => {
  const rod = layoutRod(values, limit, width, values);

  it('carries all twenty washers, inside the drawing', () => {
    expect(rod.washers).toHaveLength(20);
    expect(rod.under + rod.over).toBe(20);
    for (const w of rod.washers) {
      expect(w.x - rod.column / 2).toBeGreaterThanOrEqual(0);
      expect(w.x + rod.column / 2).toBeLessThanOrEqual(width);
    }
  });

  it('never lets a washer cross the collar', () => {
    if (limit === undefined) return expect(rod.collarX).toBeUndefined();
    const face = rod.collarX as number;
    for (const w of rod.washers) {
      const clear = w.past
        ? w.x - rod.column / 2 >= face + COLLAR_WIDTH - 1e-9
        : w.x + rod.column / 2 <= face + 1e-9;
      expect(clear).toBe(true);
      expect(w.past).toBe(w.value > limit);
    }
  });

  it('keeps the order of the values and piles them without holes', () => {
    rod.washers.slice(1).forEach((w, i) => {
      const last = rod.washers[i];
      if (last) expect(w.x).toBeGreaterThanOrEqual(last.x);
      if (last && w.x === last.x) expect(w.row).toBe(last.row + 1);
    });
  });

  it('has two to eight ticks and no figure that is not a number', () => {
    expect(rod.ticks.length).toBeGreaterThanOrEqual(2);
    expect(rod.ticks.length).toBeLessThanOrEqual(8);
    expect(numbersIn(rod).every(Number.isFinite)).toBe(true);
  });
});

describe('the rod', () => {
  it('counts a washer on the limit as within it', () => {
    expect(layoutRod(EQUAL, 250, 372).under).toBe(20);
  });

  it('sets the collar at the end when the limit lies far off the scale', () => {
    expect(layoutRod(MONEY, 90_000, 372).offScale).toBe('right');
    expect(layoutRod(MONEY, 5300, 372).offScale).toBeUndefined();
  });

  it('takes the middle ten for the half', () => {
    const { from, to } = layoutRod(MONEY, undefined, 372).half;
    expect([from, to]).toEqual([MONEY[5], MONEY[14]]);
  });

  it('lays washers edge-on where the row is narrow or a pile too high', () => {
    expect(layoutRod(MONEY, undefined, 249).mode).toBe('edge');
    expect(layoutRod(MONEY, undefined, 250).mode).toBe('face');
    expect(layoutRod(EQUAL, undefined, 372).mode).toBe('edge');
  });

  it('draws an empty rod from no values', () => {
    expect(layoutRod([], 100, 300).washers).toEqual([]);
    expect(numbersIn(layoutRod([], undefined, 300)).every(Number.isFinite)).toBe(true);
  });
});

describe('round figures and ranges', () => {
  it.each([
    [0, 7000, 8, 1000],
    [3680, 7050, 5, 1000],
    [0.012, 0.049, 6, 0.01],
  ])('a scale from %d to %d with %d ticks steps by %d', (low, high, most, step) => {
    const { from, to, ticks } = niceScale(low, high, most);
    expect((ticks[1] ?? 0) - (ticks[0] ?? 0)).toBeCloseTo(step, 9);
    expect(from).toBeLessThanOrEqual(low);
    expect(to).toBeGreaterThanOrEqual(high);
  });

  it.each([
    ['$4,400', '$5,600', '$4,400–5,600'],
    ['240 h', '300 h', '240–300 h'],
    ['12', '12', '12'],
    ['90 min', '2 h', '90 min – 2 h'],
    ['−$20', '$30', '−$20 – $30'],
  ])('%s and %s make %s', (from, to, text) => {
    expect(spanText(from, to)).toBe(text);
  });

  it('puts a dimension outside its line when the gap is too small', () => {
    expect(layoutDimension(0, 140, '24–48 h', 140).inside).toBe(true);
    expect(layoutDimension(10, 20, '26.8–27.1 mm', 300)).toMatchObject({ inside: false, anchor: 'start' });
    expect(layoutDimension(270, 290, '26.8–27.1 mm', 300)).toMatchObject({ inside: false, anchor: 'end' });
  });
});

describe('the bar of stages', () => {
  const stages = [9, 30, 0, 20, 400].map((hours, i) => ({
    id: `s${i}`,
    numeral: `${i}`,
    name: `Stage ${i}`,
    hours,
    outOfUse: i > 2,
  }));

  it('fills its width and keeps room for every numeral', () => {
    const places = layoutStages(stages, 900);
    expect(places[places.length - 1]?.x2).toBeCloseTo(900, 6);
    for (const p of places) expect(p.x2 - p.x1).toBeGreaterThanOrEqual(15.9);
  });

  it('never sets two labels of one line over each other', () => {
    const places = layoutStages(stages, 500);
    for (const a of places) {
      const same = places.filter((b) => b.line === a.line && b.labelX > a.labelX);
      for (const b of same) expect(b.labelX - a.labelX).toBeGreaterThan(40);
    }
  });
});
