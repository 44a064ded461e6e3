import { atLeastLimit, atMost, type Check, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { phaseMotor, variable } from './design-drive.ts';
import { cutsThreads } from './design-thread.ts';

/** Until the mark on the chuck was read, the limit is only the lathe's own, and the plan says to look. */
const unread = (read: boolean): Pick<Check, 'needs'> & { readonly comfort?: number } =>
  read ? {} : { needs: ['chuck-marked-speed'], comfort: 1.05 };

const chuckSpeed: CheckRule = (look) => {
  if (!variable(look)) return undefined;
  return atMost({
    id: 'chuck-speed',
    harm: true,
    label: 'Top speed against chuck and work',
    value: look.measured('top-speed-wanted') ?? look.fact('spindle-speed-max'),
    limit: look.figure('chuck-speed-limit'),
    remedy:
      'Set the limit in the drive for the fastest belt position, to the lowest of: the mark on the chuck, the top speed the lathe left its maker with, and what this work can stand. Clamp the speed in every program as well.',
    decisions: ['spindle-motor', 'speed-command', 'work-holding'],
    ...unread(look.measured('chuck-marked-speed') !== undefined),
  });
};

const driveReach: CheckRule = (look) => {
  if (!phaseMotor(look)) return undefined;
  return atMost({
    id: 'drive-frequency-range',
    label: 'Drive frequency at the highest speed',
    value: look.figure('drive-frequency-cap'),
    limit: productOf('Hz', {
      plate: look.fact('mains-frequency'),
      share: assumed(2, '1', 'a motor on a drive is good for about twice the frequency on its plate'),
    }),
    comfort: 1.25,
    remedy:
      'A smaller ratio in the fast belt position, or a lower top speed. The pull falls as the frequency rises, and some motors weaken from about 85 Hz.',
    decisions: ['spindle-motor'],
  });
};

const noGap: CheckRule = (look) => {
  if (!phaseMotor(look) || (look.fact('belt-steps')?.value ?? 1) < 1.5) return undefined;
  return atLeastLimit({
    id: 'spindle-speed-gap',
    label: 'Speeds between the two belt positions',
    value: look.figure('spindle-top-slow'),
    limit: look.figure('spindle-lowest-fast'),
    remedy:
      'There are speeds that neither belt position reaches with useful pull. Keep a belt position between the two, or bring their ratios closer together.',
    decisions: ['spindle-motor'],
  });
};

const slowEnough: CheckRule = (look) => {
  if (!phaseMotor(look) || !cutsThreads(look)) return undefined;
  return atMost({
    id: 'spindle-slow-enough',
    label: 'Slowest useful speed against the speed for threads',
    value: look.figure('spindle-lowest-slow'),
    limit: look.fact('thread-spindle-speed'),
    remedy:
      'Keep a slower belt position or the back gear. Under about 20 Hz the motor is weak, and it heats because its own fan hardly turns.',
    decisions: ['spindle-motor'],
  });
};

/** A draw tube and the pulley of the sensor want the same end of the spindle. */
const boreEnd: CheckRule = (look) => {
  const tube = look.chosen('work-holding', 'lever-collets', 'power-chuck');
  const pulley = look.chosen('spindle-sensor', 'slotted-disc', 'encoder-100-200', 'encoder-1000-up');
  if (!tube || !pulley) return undefined;
  return atLeastLimit({
    id: 'bore-end-clearance',
    label: 'Room for draw tube and sensor pulley at the spindle end',
    value: look.measured('spindle-end-room'),
    limit: assumed(0.025, 'm', 'a pulley with its belt takes 15 to 25 mm; from memory of the trade'),
    comfort: 1.2,
    remedy:
      'Take the sensor from the old change-gear stud, or use a ring around the spindle. Lay tube, closer and pulley out on paper before anything is bored.',
    decisions: ['work-holding', 'spindle-sensor', 'sensor-place'],
    needs: look.measured('spindle-end-room') ? [] : ['spindle-end-room'],
  });
};

export const speedChecks: readonly CheckRule[] = [chuckSpeed, driveReach, noGap, slowEnough, boreEnd];
