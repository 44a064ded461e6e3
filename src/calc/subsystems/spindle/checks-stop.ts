import { atMost, between, type CheckRule } from '../../core/check.ts';
import type { Look } from '../../core/figure.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { looseNose, ramps, withResistor } from './design-stop.ts';

const missing = (look: Look, ...facts: readonly string[]): string[] =>
  facts.filter((id) => look.measured(id) === undefined);

const intoResistor: CheckRule = (look) =>
  atMost({
    id: 'stop-energy',
    label: 'Start of a stop against the brake resistor',
    value: look.figure('stop-power-peak'),
    limit: productOf('W', {
      rating: look.measured('brake-resistor-watts'),
      short: assumed(5, '1', 'a wire-wound resistor stands five times its rating for some seconds; memory'),
    }),
    comfort: 1.25,
    remedy:
      'The start of a stop has twice the mean power: choose the resistor by that, or stop more slowly. Write down the watts on the resistor.',
    decisions: ['reversing', 'spindle-motor', 'spindle-nose'],
    needs: missing(look, 'brake-resistor-watts'),
  });

const withoutResistor: CheckRule = (look) =>
  atMost({
    id: 'stop-energy',
    label: 'Power of a stop without a brake resistor',
    value: look.figure('stop-power-mean'),
    limit: productOf('W', {
      motor: look.fact('spindle-power'),
      lost: assumed(
        0.2,
        '1',
        'motor and drive lose about a fifth of the rated power; from memory of the trade',
      ),
    }),
    comfort: 1.25,
    remedy:
      'Let the spindle ramp longer, or fit a brake resistor where the chuck cannot come loose. Too fast a ramp trips the drive with over-voltage, and the chuck then coasts.',
    decisions: ['reversing', 'spindle-motor', 'spindle-nose'],
    testWhen:
      'With the guard shut and the largest chuck on: stop from each belt position and watch for a trip.',
  });

const energy: CheckRule = (look) => {
  if (!ramps(look)) return undefined;
  return withResistor(look) ? intoResistor(look) : withoutResistor(look);
};

const ohms: CheckRule = (look) => {
  if (!withResistor(look)) return undefined;
  return between({
    id: 'brake-resistor-ohms',
    label: 'Ohms of the brake resistor',
    value: look.measured('brake-resistor-ohms'),
    limitLow: look.measured('drive-smallest-ohms'),
    limit: look.figure('brake-resistor-largest'),
    remedy:
      'Never fewer ohms than the manual of the drive allows: its brake switch fails, and then nothing brakes. More than the upper figure takes too little power, and the drive trips.',
    decisions: ['reversing', 'spindle-motor'],
    needs: missing(look, 'brake-resistor-ohms', 'drive-smallest-ohms'),
  });
};

/** A start screws the chuck on with what the motor gives in the fast belt; a stop may use half of that to loosen it. */
const nose: CheckRule = (look) => {
  if (!ramps(look) || !looseNose(look)) return undefined;
  return atMost({
    id: 'nose-torque',
    harm: true,
    label: 'Stopping torque on the screwed nose',
    value: look.figure('nose-torque'),
    limit: productOf('N·m', {
      motor: look.figure('spindle-motor-torque'),
      ratio: look.figure('belt-ratio-fast'),
      share: assumed(0.5, '1', 'half of what a start screws it on with; judgement'),
    }),
    comfort: 2,
    remedy:
      'Stop more slowly, never use a brake resistor or reverse without a lock on the chuck. A lock, or a chuck held by cams or bolts, takes the danger away.',
    decisions: ['reversing', 'spindle-nose', 'spindle-stop'],
    testWhen:
      'Pencil line across nose and chuck, guard shut, slow belt: after ten stops the line must still meet.',
  });
};

export const stopChecks: readonly CheckRule[] = [energy, ohms, nose];
