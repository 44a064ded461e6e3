import { describe, expect, test } from 'vitest';
import { encoderEdgeRate } from '../../src/calc/formulas/spindle.ts';

describe('encoder-edge-rate', () => {
  // Automation Talk, 2011-02: 2000 rpm with 360 pulses a turn gives 12 kHz on a channel; four edges a pulse.
  test('2000 turns a minute, 360 lines', () => {
    expect(encoderEdgeRate.compute({ lines: 360, speed: 2000 / 60 }) / 4).toBeCloseTo(12000, 6);
  });
});
