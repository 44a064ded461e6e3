// Supply, leakage, discharge, cables and cabinet of one whole machine: worked by hand, no published source.
import { describe, expect, test } from 'vitest';
import { checksOf } from '../../../src/calc/checks.ts';
import { decisionPosition, maskOf } from '../../../src/calc/choices/state.ts';
import type { Check } from '../../../src/calc/core/check.ts';
import type { Look } from '../../../src/calc/core/figure.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { designOf } from '../../../src/calc/design.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { ampacityByGauge } from '../../../src/calc/formulas/ampacity.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

type Changes = Parameters<typeof pathOf>[0];
const facts = { 'spindle-power': 750, 'longest-cable-run': 8, 'carriage-motor-current': 4.2 };

function designed(changes: Changes = {}, more: Record<string, number> = {}): Look {
  const path = pathOf(changes, 'medium', { facts: { ...facts, ...more } });
  return designOf(planState(path, machineOf(path.size, path.facts)).state);
}

const on120: Changes = {
  'mains-supply': 'volts-120',
  'spindle-motor': 'doubler-drive',
  'supply-circuit': 'new-circuit',
};

const found = (look: Look, id: string): Check | undefined => checksOf(look).find((check) => check.id === id);

function expectFigures(look: Look, hand: Readonly<Record<string, number>>): void {
  for (const [id, value] of Object.entries(hand)) {
    const worked = look.figure(id)?.value ?? Number.NaN;
    expect(Math.abs(worked / value - 1), `${id}: ${worked} against ${value}`).toBeLessThan(0.01);
  }
}

describe('worked by hand, no published source', () => {
  test('the machine at 230 V', () => {
    expectFigures(designed(), {
      'spindle-input-current': 7.04,
      'axis-input-current': 1.79,
      'control-input-current': 0.494,
      'machine-current': 9.33,
      'earth-leakage': 0.0055,
      'bus-bleed-time': 81.5,
      'cabinet-loss': 101.5,
      'cabinet-area': 0.572,
      'cabinet-rise-ventilated': 20.2,
      'cabinet-rise-sealed': 32.3,
      'axis-cable-drop': 0.784,
    });
  });

  test('the machine at 120 V', () => {
    expectFigures(designed(on120), {
      'spindle-input-current': 13.5,
      'axis-input-current': 3.43,
      'control-input-current': 0.947,
      'machine-current': 17.9,
    });
  });

  test('too much for 15 A and 20 A at 120 V, fine on 16 A at 230 V', () => {
    expect(found(designed(), 'supply-current')).toMatchObject({ result: 'ok' });
    const circuit = found(designed(on120), 'supply-current')!;
    expect(circuit.limit!.value).toBeCloseTo(16, 9);
    expect(circuit.result).toBe('stop');
    const outlet = designed(
      { ...on120, 'supply-circuit': 'existing-outlet' },
      { 'outlet-amps': 15, 'spindle-power': 700 },
    );
    expect(found(outlet, 'supply-current')).toMatchObject({ result: 'stop' });
    expect(found(outlet, 'supply-current')!.limit!.value).toBeCloseTo(12, 9);
  });

  test('fine on a 30 mA device, too much for a 5 mA one, and a second earth is asked for', () => {
    const usual = found(designed({ 'ground-fault-device': 'trips-at-30-ma' }), 'earth-leakage')!;
    expect(usual.result).toBe('ok');
    expect(usual.value!.value / 0.03).toBeCloseTo(0.183, 3);
    const sensitive = found(designed({ 'ground-fault-device': 'trips-at-5-ma' }), 'earth-leakage')!;
    expect(sensitive.result).toBe('stop');
    expect(sensitive.value!.value / 0.005).toBeCloseTo(1.1, 9);
    expect(found(designed(), 'second-earth')!.result).toBe('look');
  });

  test('the fan is only just enough; a shut box would not do', () => {
    const look = designed();
    expect(found(look, 'cabinet-heat')!.result).toBe('look');
    const allowed = look.figure('cabinet-rise-allowed')!.value;
    expect(look.figure('cabinet-rise-sealed')!.value).toBeGreaterThan(allowed);
  });
});

describe('common practice', () => {
  test('a new circuit is judged by its own rating, by the voltage of the house', () => {
    const rating = (changes: Changes) =>
      designed(changes, { 'outlet-amps': 10 }).figure('circuit-rating')!.value;
    expect(rating({})).toBe(10);
    expect(rating({ 'supply-circuit': 'new-circuit' })).toBe(16);
    expect(rating(on120)).toBe(20);
    expect(rating({ 'supply-circuit': 'new-circuit', 'mains-supply': 'both-voltages' })).toBe(20);
  });

  test('the plate of the drive overrides our estimate, and is forgotten where no drive is fitted', () => {
    const plate = { 'drive-input-current': 12 };
    expect(designed({}, plate).figure('spindle-input-current')).toMatchObject({
      value: 12,
      origin: { kind: 'answered' },
    });
    const kept = designed({ 'spindle-motor': 'keep-speed-knob' }, plate);
    expect(kept.figure('spindle-input-current')!.value).not.toBe(12);
  });

  test('a three-phase motor of 3.5 A is safe on 18 gauge, and its cable has room to spare', () => {
    const look = designed({}, { 'spindle-plate-current': 3.5 });
    const reserve = look.figure('motor-wire-reserve')!.value;
    expect(reserve).toBeLessThan(ampacityByGauge[18]!);
    expect(ampacityByGauge[12]! / reserve).toBeGreaterThan(5);
    expect(found(look, 'spindle-cable')).toMatchObject({ result: 'ok' });
  });

  test('a longer cable never loses fewer volts, a stronger fan is never wished for by a cooler box', () => {
    const drop = (length: number) =>
      designed({}, { 'longest-cable-run': length }).figure('sensor-drop')!.value;
    for (const length of [1, 2, 5, 10]) expect(drop(length * 1.5)).toBeGreaterThan(drop(length));
    const air = (power: number) =>
      designed({}, { 'spindle-power': power }).figure('cabinet-airflow-needed')!.value;
    expect(air(1500)).toBeGreaterThan(air(400));
  });

  test('a stop that only tells the computer is never complete', () => {
    const path = pathOf({}, 'medium');
    const { state } = planState(path, machineOf(path.size, path.facts));
    const masks = state.masks.slice();
    masks[decisionPosition('stop-circuit')] = maskOf('stop-circuit', ['tells-computer-only']);
    expect(found(designOf({ ...state, masks }), 'stop-grade')).toMatchObject({ result: 'stop' });
    expect(found(designed(), 'stop-grade')).toMatchObject({ result: 'ok' });
  });

  test('what only the machine can prove says when to test it and never passes on paper', () => {
    for (const id of ['stop-table', 'drive-discharged']) {
      const check = found(designed(), id)!;
      expect(check.result, id).toBe('not-yet');
      expect(check.testWhen, id).toBeTruthy();
    }
    expect(found(designed(), 'drive-discharged')!.remedy).toContain('82 seconds');
  });
});
