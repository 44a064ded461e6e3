import type { Figure } from '../../core/figure.ts';
import { motorFigures } from '../motors/axis-motor.ts';
import { pulseFigures } from '../motors/axis-pulses.ts';
import { pushFigures } from '../motors/axis-push.ts';
import { rapidFigures } from '../motors/axis-rapid.ts';
import { stiffnessFigures } from '../motors/axis-stiffness.ts';
import { cutFigures } from './design-cut.ts';
import { screwFigures } from './design-screw.ts';

/** Screw, motor, push and stiffness of the carriage, in the order in which they are worked out. */
export const figures: readonly Figure[] = [
  ...screwFigures,
  ...motorFigures('carriage'),
  ...cutFigures,
  ...pushFigures('carriage', ['push-turning', 'push-facing', 'push-drilling']),
  ...rapidFigures('carriage'),
  ...pulseFigures('carriage'),
  ...stiffnessFigures('carriage'),
];
