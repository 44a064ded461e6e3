import { mm } from '../../core/reading.ts';

export type HomedSlide = 'carriage' | 'cross';

/**
 * Most that ten homings, warm and cold, may differ, in metres of the slide's own movement. Across it shows twice on a
 * diameter; along, every length of a part counts from the face that is turned in the same clamping. Common practice, no source.
 */
export const homeSpread: Readonly<Record<HomedSlide, number>> = { carriage: mm(0.05), cross: mm(0.01) };

export interface ExpectedSpread {
  readonly metres: number;
  readonly why: string;
}

const plunger: ExpectedSpread = {
  metres: mm(0.01),
  why: 'with a precision switch; from memory of the trade',
};
const sensor: ExpectedSpread = {
  metres: mm(0.05),
  why: 'with a plain inductive sensor, which drifts 0.02 to 0.05 mm as it warms over a day; from memory of the trade',
};
const mark: ExpectedSpread = {
  metres: mm(0.005),
  why: 'with a precision switch and the mark of the motor; from memory of the trade',
};
const byHand: ExpectedSpread = {
  metres: mm(0.03),
  why: 'touched off by hand after each switch-on; from memory of the trade',
};

/** What the buy list fits: a sensor along, a plunger across. Undefined where nobody has chosen. */
export function expectedSpread(option: string | undefined, slide: HomedSlide): ExpectedSpread | undefined {
  if (option === 'home-and-motor-mark') return mark;
  if (option === 'no-homing') return byHand;
  if (option !== 'home-switches' && option !== 'home-and-limit-switches') return undefined;
  return slide === 'cross' ? plunger : sensor;
}
