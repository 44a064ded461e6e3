import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';

const counting: CheckRule = (look) => {
  const limit = look.figure('control-count-limit');
  if (look.figure('sensor-lines') === undefined || limit === undefined) return undefined;
  return atMost({
    id: 'encoder-count-rate',
    label: 'Counts from the spindle sensor',
    value: look.figure('encoder-edges'),
    limit,
    comfort: 2,
    remedy:
      'Fewer lines on the sensor, or a control that counts in hardware. Read the limit in the manual of the control before buying.',
    decisions: ['spindle-sensor', 'control'],
  });
};

/** Seven tenths of the limit leave room for speeding up and catching up. */
const sending: CheckRule = (look) => {
  const limit = look.figure('control-pulse-limit');
  const value = look.figure('pulse-rate');
  if (limit === undefined || value === undefined) return undefined;
  return atMost({
    id: 'pulse-rate',
    label: 'Step pulses of the faster slide',
    value,
    limit,
    comfort: 1 / 0.7,
    remedy:
      'Fewer microsteps, a smaller ratio, a coarser screw or a slower rapid; or a control that makes its pulses in hardware.',
    decisions: ['control', 'carriage-coupling', 'cross-screw'],
  });
};

const timing: CheckRule = (look) => {
  const value = look.figure('control-beat');
  if (value === undefined) return undefined;
  return atLeastLimit({
    id: 'software-step-timing',
    label: 'Length of a step pulse from the PC',
    value,
    limit: productOf('s', {
      drive: assumed(5e-6, 's', 'ordinary drives want 2.5 to 5 µs; from memory of the trade'),
      twice: assumed(2, '1', 'twice what the data sheet asks, for buffers and long wires'),
    }),
    comfort: 1.2,
    remedy:
      'Set pulse, gap and direction times to twice the data sheet of the drive; a low-voltage port needs more. A longer beat means slower rapids.',
    decisions: ['control', 'drives'],
    testWhen: 'Timing test of the very PC for 12 hours under load, before any card or drive is ordered.',
  });
};

export const rateChecks: readonly CheckRule[] = [counting, sending, timing];
