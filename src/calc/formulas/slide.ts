import type { Formula } from '../core/formula.ts';
import { gravity } from './constants.ts';

/**
 * What rubs on a way. `gibDrag` is the pull that the tightened gib alone asks for; `wedgeAngle` is the angle of the
 * dovetail against the flat, a quarter turn (π/2) for a flat way.
 */
type Way = { mass: number; friction: number; cuttingForce: number; gibDrag: number; wedgeAngle: number };

const wayInputs = { mass: 'kg', friction: '1', cuttingForce: 'N', gibDrag: 'N', wedgeAngle: 'rad' } as const;

/** Pull that moves a slide against its friction, N. `cuttingForce` is the part that presses the slide down. */
export const slideFriction: Formula<Way> = {
  id: 'slide-friction',
  label: 'Friction of the slide',
  equation: 'force = friction ÷ sin(wedgeAngle) × (mass × g + cuttingForce) + gibDrag',
  tex: 'F_f = \\frac{\\mu}{\\sin\\alpha}\\left(m g + F_c\\right) + F_g',
  inputs: wayInputs,
  unit: 'N',
  source: {
    ref: 'FANUC AC servo motor αiS/αi series descriptions, B-65262EN/03',
    at: 'p. 46, force on a horizontal axis; the dovetail term is statics',
  },
  valid: { friction: [0.03, 0.2], wedgeAngle: [Math.PI / 4, Math.PI / 2] },
  compute: ({ mass, friction, cuttingForce, gibDrag, wedgeAngle }) =>
    (friction / Math.sin(wedgeAngle)) * (mass * gravity + cuttingForce) + gibDrag,
};

/** Push that a slide needs, N: the force of the cut along the slide (`axialForce`) and the friction. */
export const slideThrust: Formula<Way & { axialForce: number }> = {
  id: 'slide-thrust',
  label: 'Push that the slide needs',
  equation: 'force = axialForce + friction ÷ sin(wedgeAngle) × (mass × g + cuttingForce) + gibDrag',
  tex: 'F = F_a + \\frac{\\mu}{\\sin\\alpha}\\left(m g + F_c\\right) + F_g',
  inputs: { axialForce: 'N', ...wayInputs },
  unit: 'N',
  source: {
    ref: 'FANUC AC servo motor βiS series descriptions, B-65302EN/01',
    at: 'p. 59, force while cutting; the dovetail term is statics',
  },
  valid: slideFriction.valid,
  compute: ({ axialForce, ...way }) => axialForce + slideFriction.compute(way),
};

/** Time of a move from rest to rest, s. A move too short to reach the speed speeds up half-way and slows down again. */
export const moveTime: Formula<{ distance: number; speed: number; acceleration: number }> = {
  id: 'move-time',
  label: 'Time of a move',
  equation:
    'time = distance ÷ speed + speed ÷ acceleration; 2 × √(distance ÷ acceleration) where distance < speed² ÷ acceleration',
  tex: 't = \\frac{s}{v} + \\frac{v}{a},\\quad s < \\frac{v^2}{a}:\\; t = 2\\sqrt{\\frac{s}{a}}',
  inputs: { distance: 'm', speed: 'm/s', acceleration: 'm/s²' },
  unit: 's',
  source: { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, speed diagram' },
  valid: {},
  compute: ({ distance, speed, acceleration }) =>
    distance < speed ** 2 / acceleration
      ? 2 * Math.sqrt(distance / acceleration)
      : distance / speed + speed / acceleration,
};

export const slideFormulas = [slideFriction, slideThrust, moveTime] as const;
