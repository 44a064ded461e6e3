// Worked by hand, no published source: supply, cables and cabinet at the margins of their checks.
import { describe, expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/wiring/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const figures = (numbers: Record<string, number>): Bench => ({ figures: numbers });

/** A check whose one figure decides whether it arises. */
const single = (row: Omit<Row, 'absent'>, decider: string): Row => ({
  ...row,
  absent: [without(row.at(2), decider)],
});

const leakage = (margin: number): Bench =>
  figures({ 'residual-device-rating': 0.03, 'earth-leakage': 9e-3 / margin, 'leakage-allowance': 9e-3 });

describe('supply', () =>
  judges(checks, [
    {
      id: 'supply-current',
      sense: 'at-most',
      comfort: 1.1,
      at: (margin) => figures({ 'machine-current': 8 / margin, 'circuit-rating': 10 }),
    },
    {
      id: 'mains-cord',
      sense: 'at-least',
      comfort: 1,
      at: (margin) => figures({ 'mains-cord-ampacity': 16 * margin, 'circuit-rating': 16 }),
    },
    { id: 'earth-leakage', sense: 'at-most', comfort: 1.3, at: leakage },
  ]));

describe('cables', () =>
  judges(checks, [
    single(
      {
        id: 'spindle-cable',
        sense: 'at-least',
        comfort: 1,
        at: (margin) =>
          figures({
            'spindle-cable-current': 4,
            'spindle-cable-ampacity': 5 * margin,
            'motor-wire-reserve': 5,
          }),
      },
      'spindle-cable-current',
    ),
    {
      id: 'axis-cable',
      sense: 'at-least',
      comfort: 1,
      at: (margin) => figures({ 'axis-cable-ampacity': 6 * margin, 'axis-wire-reserve': 6 }),
    },
    single(
      {
        id: 'sensor-drop',
        sense: 'at-most',
        comfort: 1,
        at: (margin) => figures({ 'sensor-drop': 0.5 / margin }),
      },
      'sensor-drop',
    ),
    single(
      {
        id: 'encoder-drop',
        sense: 'at-most',
        comfort: 1.2,
        at: (margin) => figures({ 'encoder-drop': 0.25 / margin }),
      },
      'encoder-drop',
    ),
  ]));

const fan: Bench = { answers: { housing: 'steel-cabinet' } };
const warm = (numbers: Record<string, number>): Bench =>
  figures({ 'cabinet-area': 1, 'cabinet-rise-allowed': 15, ...numbers });

describe('cabinet', () =>
  judges(checks, [
    single(
      {
        id: 'cabinet-heat',
        when: 'shut',
        sense: 'at-most',
        comfort: 1.2,
        at: (margin) => warm({ 'cabinet-rise-sealed': 15 / margin, 'cabinet-rise-ventilated': 1 }),
      },
      'cabinet-area',
    ),
    single(
      {
        id: 'cabinet-heat',
        when: 'with a fan',
        sense: 'at-most',
        comfort: 1.2,
        at: (margin) =>
          over(fan, warm({ 'cabinet-rise-ventilated': 15 / margin, 'cabinet-rise-sealed': 1000 })),
      },
      'cabinet-area',
    ),
    single(
      {
        id: 'panel-fill',
        sense: 'at-most',
        comfort: 1.1,
        at: (margin) => figures({ 'panel-fill': 0.75 / margin }),
      },
      'panel-fill',
    ),
  ]));

test('a shut box and one with a fan are spoken of differently', () => {
  const [shut, blown] = [find('cabinet-heat', warm({})), find('cabinet-heat', over(fan, warm({})))];
  expect(shut?.label).not.toBe(blown?.label);
  expect(shut?.remedy).not.toBe(blown?.remedy);
  expect(blown?.label).toMatch(/fan/);
});

test('an unknown safety device is looked up; without one there is nothing to compare', () => {
  const unknown = without(leakage(2), 'residual-device-rating', 'leakage-allowance');
  expect(find('earth-leakage', unknown)?.result).toBe('not-yet');
  expect(find('earth-leakage', unknown)?.remedy).toMatch(/^Needs/);
  expect(find('earth-leakage', leakage(2))?.remedy).not.toMatch(/^Needs/);
  const none = { answers: { 'ground-fault-device': 'no-device' } };
  expect(find('earth-leakage', over(unknown, none))).toBeUndefined();
  expect(find('earth-leakage', over(leakage(2), none))).toBeDefined();
});

test('more leakage than one earth wire carries is looked at, never a stop', () => {
  const at = (amperes: number) => find('second-earth', figures({ 'earth-leakage': amperes }));
  expect(at(3.4e-3)?.result).toBe('ok');
  expect(at(3.6e-3)?.result).toBe('look');
  expect(at(0.1)?.result).toBe('look');
  expect(at(3.6e-3)?.decisions).toEqual(['spindle-motor', 'axis-motor']);
  expect(find('second-earth', {})?.result).toBe('not-yet');
});

describe('a drive that holds its charge', () => {
  const charged: Bench = {
    answers: { 'spindle-motor': 'three-phase-drive' },
    figures: { 'safe-bus-voltage': 50 },
  };

  test('is never judged by the screen: only a meter says that it is dead', () => {
    expect(find('drive-discharged', charged)).toMatchObject({ result: 'not-yet', margin: undefined });
    expect(find('drive-discharged', charged)?.limit?.value).toBe(50);
    expect(find('drive-discharged', charged)?.decisions.length).toBe(2);
    expect(find('drive-discharged', charged)?.remedy).not.toMatch(/seconds/);
  });

  test('says how soon at the earliest, in whole seconds rounded up', () => {
    const bled = over(charged, { figures: { 'bus-bleed-time': 61.2 } });
    expect(find('drive-discharged', bled)?.remedy).toMatch(/sooner than about 62 seconds/);
  });

  test('does not arise where nothing holds a charge', () => {
    const plain = { answers: { 'spindle-motor': 'keep-single-phase', 'axis-motor': 'open-loop-stepper' } };
    expect(find('drive-discharged', over(charged, plain))).toBeUndefined();
  });
});
