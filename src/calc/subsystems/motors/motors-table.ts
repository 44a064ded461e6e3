import type { Look } from '../../core/figure.ts';
import type { Slide } from './axis.ts';

/** What is sold under a name, from memory of the trade. SI. */
export interface MotorKind {
  readonly kind: 'stepper' | 'servo';
  /** N·m: holding torque of a stepper, rated torque of a servo. Unknown for what is found second-hand. */
  readonly torque?: number;
  /** Times that torque for a moment. */
  readonly peak: number;
  /** A for each winding, and H. Only where a low-voltage drive chops the current. */
  readonly current?: number;
  readonly inductance?: number;
  /** kg·m². */
  readonly rotor?: number;
  /** rev/s: fastest sensible speed. */
  readonly fastest: number;
  /** V that its usual drive stands. */
  readonly driveVolts?: number;
}

const stepper = { kind: 'stepper', peak: 1, fastest: 25 } as const;

const steppers = {
  small: { ...stepper, torque: 2.2, current: 4.2, inductance: 2.5e-3, rotor: 5.7e-5, driveVolts: 50 },
  large: { ...stepper, torque: 6, current: 6, inductance: 4.5e-3, rotor: 2.7e-4, driveVolts: 80 },
} as const;

const servo = { kind: 'servo', peak: 3, fastest: 50 } as const;

const servos = {
  small: { ...servo, torque: 1.27, rotor: 3.3e-5 },
  large: { ...servo, torque: 2.39, rotor: 1.5e-4 },
} as const;

const found: MotorKind = { kind: 'servo', peak: 3, fastest: 33, rotor: 1e-4 };

const byKind: Readonly<Record<string, Readonly<Record<'small' | 'large', MotorKind>>>> = {
  'open-loop-stepper': steppers,
  'closed-loop-stepper': steppers,
  'mains-servo': servos,
  'used-dc-servo': { small: found, large: found },
};

/** An 86 mm face on this slide, or the servo of its class. */
const isLarge = (look: Look, slide: Slide): boolean =>
  look.chosen('motor-size', 'face-86-both') ||
  (slide === 'carriage' && look.chosen('motor-size', 'face-57-and-86'));

/** The motor of a slide as sold; undefined where the question of the motors is not asked. */
export const motorKind = (look: Look, slide: Slide): MotorKind | undefined =>
  byKind[look.option('axis-motor') ?? '']?.[isLarge(look, slide) ? 'large' : 'small'];

/** Times the push that is needed, to be comfortable: who notices a slip needs less. Common practice. */
export function comfortOf(look: Look): number {
  if (look.chosen('axis-motor', 'mains-servo', 'used-dc-servo')) return 1.3;
  return look.chosen('axis-motor', 'closed-loop-stepper') ? 1.5 : 2;
}
