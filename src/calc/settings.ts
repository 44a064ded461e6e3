import type { Look } from './core/figure.ts';
import { homeSettings } from './settings/axis-home.ts';
import { motionSettings } from './settings/axis-motion.ts';
import { type Slide, trainSettings } from './settings/axis-train.ts';
import { machineSettings } from './settings/machine.ts';
import type { Setting } from './settings/setting.ts';
import { spindleSettings } from './settings/spindle.ts';
import { threadSettings } from './settings/thread.ts';

export type { Setting } from './settings/setting.ts';

function slides(look: Look): Slide[] {
  if (look.chosen('driven-axes', 'carriage-only')) return ['carriage'];
  return look.chosen('driven-axes', 'cross-slide-only') ? ['cross'] : ['carriage', 'cross'];
}

/**
 * The sheet of figures that the finished machine stands on, in the order in which they are set: what is worked out
 * stands there, what is found on the machine is a blank with the way to find it. SI; every figure across the work says
 * whether it is a diameter or a radius.
 */
export const settingsOf = (look: Look): Setting[] => [
  ...slides(look).flatMap((slide) => [
    ...trainSettings(look, slide),
    ...motionSettings(look, slide),
    ...homeSettings(look, slide),
  ]),
  ...spindleSettings(look),
  ...threadSettings(look),
  ...machineSettings(look),
];
