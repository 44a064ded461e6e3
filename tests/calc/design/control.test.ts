// Limits of the control, and what only the machine can prove. Worked by hand, no published source.
import { describe, expect, test } from 'vitest';
import { checksOf } from '../../../src/calc/checks.ts';
import { stopTable } from '../../../src/calc/subsystems/wiring/stop-table.ts';
import { near } from '../formulas/near.ts';
import { checkOf, designWith, figureOf } from './plans.ts';

const ports = { control: ['parallel-port-pc'], purpose: ['repeat-batches'] };
const design = (facts: Record<string, number>, answers: Record<string, string[]>) =>
  designWith('medium', facts, answers);

describe('pulses', () => {
  test('a beat of 25 µs gives 20,000 pulses a second, and a pulse long enough for ordinary drives', () => {
    const look = design({}, ports);
    near(figureOf(look, 'control-pulse-limit'), 20e3, 1e-9);
    near(checkOf(look, 'software-step-timing').margin!, 2.5, 1e-9);
  });

  test('a PC that passes 60,000 pulses a second makes them too short', () => {
    expect(checkOf(design({ 'control-pulse-limit': 60e3 }, ports), 'software-step-timing').result).toBe(
      'stop',
    );
  });

  test('hardware keeps its own limit, the owner’s figure stands before ours', () => {
    const card = { control: ['motion-card-pc'] };
    expect(figureOf(design({}, card), 'control-pulse-limit')).toBe(400e3);
    expect(figureOf(design({ 'control-pulse-limit': 90e3 }, card), 'control-pulse-limit')).toBe(90e3);
    expect(checksOf(design({}, card)).some(({ id }) => id === 'software-step-timing')).toBe(false);
  });

  test('the faster slide is held against seven tenths of the limit', () => {
    const rate = figureOf(design({}, ports), 'pulse-rate');
    const judged = (share: number) =>
      checkOf(design({ 'control-pulse-limit': rate / share }, ports), 'pulse-rate').result;
    expect([0.69, 0.71, 1.01].map(judged)).toEqual(['ok', 'look', 'stop']);
  });
});

describe('to be proved on the machine', () => {
  test('no row of the stop table counts before it was tried', () => {
    const look = design({}, {});
    const check = checkOf(look, 'stop-table');
    expect([check.result, check.needs]).toEqual(['not-yet', ['stop-rows-proved']]);
    expect(check.testWhen).toBeDefined();
    const rows = stopTable(look).length;
    expect(checkOf(design({ 'stop-rows-proved': rows - 1 }, {}), 'stop-table').result).toBe('stop');
    expect(checkOf(design({ 'stop-rows-proved': rows }, {}), 'stop-table').result).toBe('ok');
  });

  test('signals of 5 V do not switch inputs for 24 V, and 24 V burn inputs for 5 V', () => {
    const judged = (out: number, into: number) =>
      checkOf(design({ 'control-output-volts': out, 'drive-input-volts': into }, {}), 'signal-levels').result;
    expect([judged(5, 24), judged(24, 5), judged(5, 5), judged(24, 24)]).toEqual([
      'stop',
      'stop',
      'ok',
      'ok',
    ]);
    expect(checkOf(design({}, {}), 'signal-levels').result).toBe('not-yet');
  });

  test('a program that asks for more than the chuck stands is stopped', () => {
    const byVoltage = { 'speed-command': ['speed-by-voltage'], 'spindle-motor': ['three-phase-drive'] };
    const marked = { 'chuck-marked-speed': 1500 / 60 };
    expect(checkOf(design(marked, byVoltage), 'program-speed-clamp').result).toBe('not-yet');
    const clamped = (rpm: number) =>
      checkOf(design({ ...marked, 'program-speed-clamp': rpm / 60 }, byVoltage), 'program-speed-clamp');
    expect([clamped(1400).result, clamped(1800).result]).toEqual(['ok', 'stop']);
  });
});
