// Figures of cable, stop, leakage, tools in a row and delivery, held against printed figures and laws.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cable } from '../../../src/calc/working-figures/cable.ts';
import { exampleOf } from '../../../src/calc/working-figures/figure.ts';
import { gang } from '../../../src/calc/working-figures/gang.ts';
import { leadTime } from '../../../src/calc/working-figures/lead-time.ts';
import { leakage } from '../../../src/calc/working-figures/leakage.ts';
import { stopping } from '../../../src/calc/working-figures/stopping.ts';
import { tolerance } from '../../published/row.ts';
import { printed, RUNS, said, within } from './said.ts';

/** A share of a smooth spread is found by halving, which takes its time. */
const FEW = { numRuns: 12 };

const more = fc.double({ min: 1, max: 4, noNaN: true });

test.each(printed('voltage-drop', ({ temperature, circuit }) => temperature === 25 && circuit === 'dc'))(
  'cable: $what',
  (row) => {
    const { current, length, area } = row.inputs as Record<string, number>;
    const ours = said(cable, 'drop', {
      ...exampleOf(cable),
      current: current!,
      length: length!,
      area: area!,
    });
    expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
  },
);

test.each(printed('stop-energy', () => true))('stopping: $what', (row) => {
  const { inertia, speed } = row.inputs as Record<string, number>;
  const ours = said(stopping, 'energy', { inertia: inertia!, speed: speed!, time: 1 });
  expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
});

test('cable: a longer way or more current never loses less, thicker copper never more; lost and left are all of it', () => {
  fc.assert(
    fc.property(within(cable), more, (values, times) => {
      const now = said(cable, 'drop', values);
      const drop = (id: string) => said(cable, 'drop', { ...values, [id]: values[id]! * times });
      for (const id of ['current', 'length']) expect(drop(id)).toBeGreaterThanOrEqual(now);
      expect(drop('area')).toBeLessThanOrEqual(now);
      if (now <= values.volts!) expect(now + said(cable, 'left', values)).toBeCloseTo(values.volts!, 9);
      expect(cable.answer(values).say.includes('within')).toBe(said(cable, 'share', values) <= 5);
    }),
    RUNS,
  );
});

test('stopping: twice the speed holds four times the energy, and a slower stop twists and heats less', () => {
  fc.assert(
    fc.property(within(stopping), more, (values, times) => {
      const twice = { ...values, speed: values.speed! * 2 };
      const slower = { ...values, time: values.time! * times };
      const now = (id: string) => said(stopping, id, values);
      expect(said(stopping, 'energy', twice) / now('energy')).toBeCloseTo(4, 9);
      expect(now('peak') / now('mean')).toBeCloseTo(2, 9);
      for (const id of ['torque', 'peak']) expect(said(stopping, id, slower)).toBeLessThanOrEqual(now(id));
    }),
    RUNS,
  );
});

test('stopping: a stop under 5 s is always said to be none for a bare screwed nose', () => {
  fc.assert(
    fc.property(within(stopping), (values) => {
      expect(stopping.answer(values).say.includes('cannot come loose')).toBe(values.time! < 5);
    }),
    RUNS,
  );
});

test('leakage: parts add up, a more sensitive device is never more comfortable', () => {
  fc.assert(
    fc.property(within(leakage), more, (values, times) => {
      const parts = (values.spindle! + values.axes! + values.rest!) * 1000;
      expect(said(leakage, 'all', values)).toBeCloseTo(parts, 9);
      const blunter = { ...values, rating: values.rating! * times };
      expect(said(leakage, 'share', blunter)).toBeLessThanOrEqual(
        said(leakage, 'share', values) * (1 + 1e-12),
      );
      expect(leakage.answer(values).say.includes('trip for nothing')).toBe(
        said(leakage, 'share', values) > 40,
      );
      expect(leakage.answer(values).say.includes('licensed electrician')).toBe(parts > 3.5 * (1 + 1e-12));
    }),
    RUNS,
  );
});

test('gang: the most that is named fits, and one more does not', () => {
  fc.assert(
    fc.property(within(gang), (values) => {
      const most = said(gang, 'most', values);
      const needed = (tools: number) => said(gang, 'needed', { ...values, tools }) / 1000;
      if (most > 0) expect(needed(most)).toBeLessThanOrEqual(values.travel! + 1e-9);
      expect(needed(most + 1)).toBeGreaterThan(values.travel! - 1e-9);
    }),
    RUNS,
  );
});

test('lead-time: never more than 20, never fewer when ordered earlier, all of them from the slowest on', () => {
  fc.assert(
    fc.property(within(leadTime), more, (values, times) => {
      const there = (ahead: number) => said(leadTime, 'there', { ...values, ahead });
      expect(there(values.ahead! * times)).toBeGreaterThanOrEqual(there(values.ahead!));
      expect(there(Math.max(values.quick!, values.usual!, values.slow!))).toBe(20);
      expect(said(leadTime, 'needed', values)).toBeGreaterThanOrEqual(said(leadTime, 'half', values));
    }),
    FEW,
  );
});

test('lead-time: where quick and slow lie equally far from the usual, half are there by the week of the usual', () => {
  fc.assert(
    fc.property(within(leadTime), ({ usual = 1, quick = 1, ahead = 1 }) => {
      const away = Math.abs(usual - quick);
      const even = { quick: usual - away, usual, slow: usual + away, ahead };
      expect(said(leadTime, 'half', even)).toBe(Math.ceil(usual - 1e-6));
    }),
    FEW,
  );
});
