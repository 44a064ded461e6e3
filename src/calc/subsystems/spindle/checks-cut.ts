import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { largestOf } from '../../core/steps.ts';
import { variable } from './design-drive.ts';

/** Four fifths of what the motor has: a worn edge takes the rest. */
const comfort = 1.25;

const power: CheckRule = (look) =>
  atMost({
    id: 'spindle-cut-power',
    label: 'Power of the spindle motor for an ordinary cut',
    value: look.figure('cut-power'),
    limit: look.fact('spindle-power'),
    comfort,
    remedy:
      'A lighter cut, a slower one, or a stronger motor. Use at most four fifths of the plate: a worn edge takes the rest.',
    decisions: ['spindle-motor', 'materials'],
  });

const torque: CheckRule = (look) => {
  if (!variable(look)) return undefined;
  return atLeastLimit({
    id: 'spindle-cut-torque',
    label: 'Torque at the spindle for an ordinary cut, better of the two belt positions',
    value: largestOf({
      slow: look.figure('spindle-torque-slow'),
      fast: look.figure('spindle-torque-fast'),
    }),
    limit: look.figure('cut-torque'),
    comfort,
    remedy:
      'A shallower cut, or a slower belt position: electronics lower the speed, they do not raise the pull. Enough power on the plate does not help where the torque is missing.',
    decisions: ['spindle-motor', 'materials'],
  });
};

/** Shaft height, feet and belt side of a new motor can only be measured on the lathe. */
const envelope: CheckRule = (look) => {
  const bought = look.chosen(
    'spindle-motor',
    'three-phase-drive',
    'doubler-drive',
    'brushless-kit',
    'servo-spindle',
  );
  if (!bought) return undefined;
  return atMost({
    id: 'spindle-motor-room',
    label: 'New spindle motor on the stand',
    value: look.measured('motor-shaft-height'),
    limit: look.measured('motor-shaft-room'),
    remedy:
      'Compare shaft height, holes of the feet, shaft diameter with its key, and the side the shaft comes out, before you order; shim up a motor that is too low, never cut the stand. Ask the maker what side pull the shaft takes from a tight belt.',
    decisions: ['spindle-motor', 'stand'],
    needs: ['motor-shaft-height', 'motor-shaft-room'].filter((id) => look.measured(id) === undefined),
  });
};

export const cutChecks: readonly CheckRule[] = [power, torque, envelope];
