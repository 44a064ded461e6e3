import { atMost, type CheckRule } from '../../core/check.ts';
import { assumed, chosen } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';

const supply: CheckRule = (look) => {
  const rating = look.fact('outlet-amps');
  return atMost({
    id: 'supply-current',
    label: 'Current of the whole machine',
    value: look.figure('machine-current'),
    limit: productOf('A', {
      rating,
      share: assumed(0.8, '1', 'a circuit is loaded to four fifths for long work; common practice'),
    }),
    comfort: 1.1,
    remedy:
      'Have an electrician fit a circuit for the lathe, or keep the spindle motor it has. The plate of the drive decides, not this estimate.',
    decisions: ['supply-circuit', 'spindle-motor', 'axis-motor'],
  });
};

const deviceRating: Readonly<Record<string, number>> = { 'trips-at-5-ma': 0.005, 'trips-at-30-ma': 0.03 };

const leakage: CheckRule = (look) => {
  const device = look.option('ground-fault-device') ?? '';
  const rating = deviceRating[device];
  return atMost({
    id: 'earth-leakage',
    label: 'Leakage to earth against the safety device',
    value: look.figure('earth-leakage'),
    limit: productOf('A', {
      rating:
        rating === undefined
          ? undefined
          : chosen(rating, 'A', 'ground-fault-device', device, 'what it trips at'),
      share: assumed(0.4, '1', 'a device may trip from half of its rating; common practice'),
    }),
    comfort: 1.3,
    remedy:
      rating === undefined
        ? 'Needs: which residual-current (ground-fault) device feeds the outlet. Read it on the device or ask an electrician.'
        : 'Never bypass the device and never lift an earth. Ask an electrician for a suitable device or circuit.',
    decisions: ['ground-fault-device', 'spindle-motor', 'supply-circuit'],
  });
};

export const checks: readonly CheckRule[] = [supply, leakage];
