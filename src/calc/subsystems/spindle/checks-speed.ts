import { atLeastLimit, atMost, type Check, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { phaseMotor, variable } from './design-drive.ts';
import { cutsThreads } from './design-thread.ts';

const marked = (needed: boolean): Pick<Check, 'needs'> => (needed ? { needs: ['chuck-marked-speed'] } : {});

const chuckSpeed: CheckRule = (look) => {
  if (!variable(look)) return undefined;
  return atMost({
    id: 'chuck-speed',
    label: 'Top speed against chuck and work',
    value: look.measured('top-speed-wanted') ?? look.fact('spindle-speed-max'),
    limit: look.figure('chuck-speed-limit'),
    remedy:
      'Set the limit in the drive for the fastest belt position, to the lowest of: the mark on the chuck, the top speed the lathe left its maker with, and what this work can stand. Clamp the speed in every program as well.',
    decisions: ['spindle-motor', 'speed-command', 'work-holding'],
    ...marked(look.measured('chuck-marked-speed') === undefined),
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

export const speedChecks: readonly CheckRule[] = [chuckSpeed, driveReach, noGap, slowEnough];
