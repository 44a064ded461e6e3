import { atMost, type Check, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { assumed } from '../../core/quantity.ts';

const homes = (look: Look): boolean =>
  look.chosen('home-limits', 'home-switches', 'home-and-limit-switches', 'home-and-motor-mark');

const shared: Pick<Check, 'remedy' | 'decisions' | 'testWhen'> = {
  remedy:
    'A precision switch, or a mark on the motor, in place of a plain inductive sensor; a stiff bracket, a clean face and a slow second approach. With the tool in a hole, jog the carriage out by hand before any homing.',
  decisions: ['home-limits', 'axis-motor'],
  testWhen: 'When homing is set up, and again warm after an hour of work.',
};

/** Spread of ten homings; the cross slide shows it twice on the diameter. */
const cross: CheckRule = (look) => {
  if (!homes(look) || look.chosen('driven-axes', 'carriage-only')) return undefined;
  return atMost({
    id: 'cross-home-spread',
    label: 'Homing of the cross slide comes back',
    value: look.measured('cross-home-spread'),
    limit: assumed(0.01e-3, 'm', 'a hundredth, two on the diameter; common practice'),
    comfort: 1.2,
    needs: look.measured('cross-home-spread') ? [] : ['cross-home-spread'],
    ...shared,
  });
};

const carriage: CheckRule = (look) => {
  if (!homes(look) || look.chosen('driven-axes', 'cross-slide-only')) return undefined;
  return atMost({
    id: 'carriage-home-spread',
    label: 'Homing of the carriage comes back',
    value: look.measured('carriage-home-spread'),
    limit: assumed(
      0.05e-3,
      'm',
      'five hundredths are enough for most lengths, two are good; common practice',
    ),
    comfort: 2.5,
    needs: look.measured('carriage-home-spread') ? [] : ['carriage-home-spread'],
    ...shared,
  });
};

export const homeChecks: readonly CheckRule[] = [cross, carriage];
