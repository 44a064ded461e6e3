import { atMost, type CheckRule } from '../../core/check.ts';

const drivenByElectronics = ['three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle'];

const chuckSpeed: CheckRule = (look) => {
  if (!look.chosen('spindle-motor', ...drivenByElectronics)) return undefined;
  return atMost({
    id: 'chuck-speed',
    label: 'Top speed against the chuck',
    value: look.fact('spindle-speed-max'),
    limit: look.measured('chuck-marked-speed') ?? look.fact('spindle-speed-max'),
    remedy:
      'Set the limit in the drive for the fastest belt position, to the lowest of: the mark on the chuck, the top speed the lathe left its maker with, and what this work can stand. Clamp the speed in every program as well.',
    decisions: ['spindle-motor', 'speed-command'],
  });
};

export const checks: readonly CheckRule[] = [chuckSpeed];
