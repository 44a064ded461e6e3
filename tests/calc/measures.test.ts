// Worked-out figures that decide about outlet, second earth and the warnings beside them.
import { expect, test } from 'vitest';
import { newState } from '../../src/calc/choices/state.ts';
import type { Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { measure } from '../../src/calc/measures.ts';
import { pathOf } from '../../src/content/reference-paths.ts';

const on120 = { 'mains-supply': 'volts-120' };

function figure(id: string, changes: Parameters<typeof pathOf>[0], rest: Partial<Path> = {}): number {
  const path = pathOf(changes, 'medium', { facts: { 'spindle-power': 750 }, ...rest });
  const machine = machineOf(path.size, path.facts);
  const { state } = planState(path, machine);
  return measure({ ...newState(machine, measure), masks: state.masks }, id);
}

test('the whole machine draws 9.3 A at 230 V and 17.9 A at 120 V', () => {
  expect(figure('machine-current', {})).toBeCloseTo(9.33, 1);
  const doubler = { ...on120, 'spindle-motor': 'doubler-drive', 'supply-circuit': 'new-circuit' };
  expect(figure('machine-current', doubler)).toBeCloseTo(17.9, 1);
});

test('a new circuit brings 230 V for a spindle drive, and leaves a kept motor and a doubler on 120 V', () => {
  const circuit = { ...on120, 'supply-circuit': 'new-circuit' };
  expect(figure('machine-current', circuit)).toBeCloseTo(figure('machine-current', {}), 6);
  const kept = {
    'spindle-motor': 'keep-single-phase',
    'speed-command': 'speed-by-knob',
    reversing: 'forward-only',
  };
  const same = { ...kept, 'spindle-stop': 'coast-to-stop' };
  expect(figure('spindle-input-current', { ...circuit, ...same })).toBeCloseTo(
    figure('spindle-input-current', { ...on120, ...same }),
    6,
  );
});

test('an ordinary spindle drive on 120 V calls for a new circuit', () => {
  const path = pathOf({ ...on120, 'supply-circuit': null });
  const machine = machineOf(path.size, path.facts);
  const { state } = planState(path, machine);
  const current = measure({ ...newState(machine, measure), masks: state.masks }, 'machine-current');
  expect(current).toBeLessThan(12);
});

test('a mixed pair of motors draws between the small and the large pair', () => {
  const of = (size: string) => figure('machine-current', { 'motor-size': size });
  expect(of('face-57-and-86')).toBeGreaterThan(of('face-57-both'));
  expect(of('face-57-and-86')).toBeLessThan(of('face-86-both'));
});

test('a spindle drive leaks past 3.5 mA to earth, a kept motor does not', () => {
  expect(figure('earth-leakage', {})).toBeCloseTo(0.0055, 6);
  for (const motor of ['keep-single-phase', 'keep-speed-knob']) {
    expect(figure('earth-leakage', { 'spindle-motor': motor }), motor).toBeLessThan(0.0035);
  }
});
