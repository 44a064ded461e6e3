import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { productOf } from '../../core/steps.ts';
import { isDriven, type Slide, slideWords, usual } from './axis.ts';
import { driveQuestions, judged } from './checks-missing.ts';
import { comfortOf, motorKind } from './motors-table.ts';

/** One job that a slide has to push for: `need` is the figure of it, by its short name. */
interface Job {
  readonly id: string;
  readonly need: string;
  readonly label: string;
  readonly remedy: string;
  /** Questions besides those of the drive. */
  readonly decisions?: readonly string[];
}

/** The usable push against one job; does not arise where the job does not. */
export const pushCheck =
  (slide: Slide, { id, need, label, remedy, decisions = ['materials'] }: Job): CheckRule =>
  (look) => {
    const limit = look.figure(`${slide}-${need}`);
    if (!isDriven(look, slide) || !limit) return undefined;
    return atLeastLimit({
      id,
      label,
      comfort: comfortOf(look),
      ...judged(look, slide, remedy, { value: look.figure(`${slide}-thrust`), limit }),
      decisions: [...driveQuestions[slide], ...decisions],
    });
  };

const motorSpeed =
  (slide: Slide): CheckRule =>
  (look) => {
    const kind = motorKind(look, slide);
    if (!isDriven(look, slide) || !kind) return undefined;
    const remedy =
      'Accept a slower rapid, a smaller reduction or a longer lead: a stepper has little left above 1,000 turns a minute.';
    return atMost({
      id: `${slide}-motor-speed`,
      label: `Motor speed at rapid, ${slideWords[slide]}`,
      comfort: kind.kind === 'stepper' ? 1.5 : 1,
      ...judged(look, slide, remedy, {
        value: look.figure(`${slide}-motor-speed-rapid`),
        limit: look.figure(`${slide}-motor-speed-limit`),
      }),
      decisions: driveQuestions[slide],
    });
  };

const rapid =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!isDriven(look, slide)) return undefined;
    return atLeastLimit({
      id: `${slide}-rapid`,
      label: `Torque left in a fast move, ${slideWords[slide]}`,
      comfort: comfortOf(look),
      ...judged(look, slide, 'Slow the rapid or the acceleration down; both cost seconds, not quality.', {
        value: look.figure(`${slide}-torque-rapid`),
        limit: look.figure(`${slide}-rapid-torque-needed`),
      }),
      ...(look.figure(`${slide}-lead`) && !look.figure(`${slide}-load-inertia`) && screwUnknown(slide)),
      decisions: driveQuestions[slide],
    });
  };

/** Of a screw that is not ours to choose the torque at rapid has to be tried. */
const screwUnknown = (slide: Slide) => ({
  remedy: `The screw of the ${slideWords[slide]} is not known well enough to say. Raise the rapid by a fifth at a time until it slips, and keep two thirds of that.`,
  testWhen: 'once the slide moves under power, after the stop has been proved',
});

const acceleration =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!look.figure(`${slide}-load-inertia`) || !look.figure(`${slide}-torque-rapid`)) return undefined;
    return atMost({
      id: `${slide}-acceleration`,
      label: `Torque spent on speeding up, ${slideWords[slide]}`,
      value: look.figure(`${slide}-acceleration-torque`),
      limit: productOf('N·m', {
        torque: look.figure(`${slide}-torque-rapid`),
        share: usual(0.3, '1', 'three tenths of what is left at rapid; common practice'),
      }),
      remedy: 'Halve the acceleration, or take smaller pulleys: the one on the screw weighs most of all.',
      decisions: driveQuestions[slide],
    });
  };

const inertia =
  (slide: Slide): CheckRule =>
  (look) => {
    const kind = motorKind(look, slide);
    const value = look.figure(`${slide}-inertia-ratio`);
    if (!kind || !value) return undefined;
    const most = kind.kind === 'stepper' ? 10 : 5;
    return atMost({
      id: `${slide}-inertia`,
      label: `Inertia against the motor itself, ${slideWords[slide]}`,
      value,
      limit: usual(most, '1', `at most ${most} times for this kind of motor; common practice`),
      comfort: 1.2,
      remedy:
        'A reduction divides what the motor feels by its square; a motor with a heavier rotor also helps.',
      decisions: driveQuestions[slide],
    });
  };

/** Speed, fast moves and inertia of one slide. */
export const motionChecks = (slide: Slide): readonly CheckRule[] => [
  motorSpeed(slide),
  rapid(slide),
  acceleration(slide),
  inertia(slide),
];
