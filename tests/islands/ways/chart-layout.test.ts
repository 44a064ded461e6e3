import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutChart } from '../../../src/islands/ways/chart-layout.ts';

const plan = { money: 5000, hours: 280 };
const ways = [
  { money: 4000, hours: 300 },
  { money: 4300, hours: 310 },
  { money: 4600, hours: 260 },
  { money: 5400, hours: 240 },
];
const draw = (more = {}) =>
  layoutChart({ ways, plan, money: undefined, hours: undefined, width: 600, ...more });

describe('the chart of money against hours', () => {
  test('more money lies further right, more hours further up', () => {
    const { washers } = draw();
    expect(washers[0]!.x).toBeLessThan(washers[1]!.x);
    expect(washers[1]!.y).toBeLessThan(washers[0]!.y);
    expect(washers[3]!.y).toBeGreaterThan(washers[2]!.y);
  });

  test('a way that another beats on both is off the line, and the line passes it by', () => {
    const { washers, line } = draw();
    expect(washers.map(({ onLine }) => onLine)).toEqual([true, false, true, true]);
    expect(line).toContain(`V${washers[2]!.y}`);
    expect(line).not.toContain(`V${washers[1]!.y}`);
  });

  test('a limit near the ways takes its place on the scale', () => {
    const { moneyLimit, hoursLimit, washers } = draw({ money: 5000, hours: 320 });
    expect(moneyLimit).toBeGreaterThan(washers[2]!.x);
    expect(moneyLimit).toBeLessThan(washers[3]!.x);
    expect(hoursLimit).toBeLessThan(washers[1]!.y);
  });

  test('a limit far off stands at the edge and squashes nothing', () => {
    const near = draw();
    const far = draw({ money: 90000 });
    expect(far.moneyLimit).toBe(far.right);
    expect(far.washers).toEqual(near.washers);
  });

  test('one way alone, just where the plan is, still gives a scale', () => {
    const { washers, across, up } = layoutChart({
      ways: [plan],
      plan,
      money: undefined,
      hours: undefined,
      width: 288,
    });
    expect(Number.isFinite(washers[0]!.x) && Number.isFinite(washers[0]!.y)).toBe(true);
    expect(across.length).toBeGreaterThan(1);
    expect(up.length).toBeGreaterThan(1);
  });

  test('everything lies within the field, whatever is found', () => {
    const spot = fc.record({
      money: fc.double({ min: 50, max: 60000, noNaN: true }),
      hours: fc.double({ min: 1, max: 2000, noNaN: true }),
    });
    const limit = fc.option(fc.double({ min: 1, max: 90000, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.array(spot, { minLength: 1, maxLength: 60 }),
        spot,
        limit,
        limit,
        fc.integer({ min: 240, max: 900 }),
        (found, now, money, hours, width) => {
          const chart = layoutChart({ ways: found, plan: now, money, hours, width });
          for (const { x, y } of [...chart.washers, chart.plan]) {
            expect(x).toBeGreaterThanOrEqual(chart.left);
            expect(x).toBeLessThanOrEqual(chart.right);
            expect(y).toBeGreaterThanOrEqual(chart.top);
            expect(y).toBeLessThanOrEqual(chart.bottom);
          }
          expect(chart.washers.some(({ onLine }) => onLine)).toBe(true);
        },
      ),
    );
  });
});
