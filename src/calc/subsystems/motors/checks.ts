import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { smallestOf } from '../../core/steps.ts';
import { isDriven, type Slide, slideWords, usual } from './axis.ts';
import { hasScrew, judged } from './checks-missing.ts';
import { lowVoltage } from './design-supply.ts';
import { motorKind } from './motors-table.ts';

const usesServos = ['mains-servo', 'used-dc-servo'];

/** Both limits at once: what the winding can use, and what the drive stands. */
const voltage =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!isDriven(look, slide) || !lowVoltage(look) || !motorKind(look, slide)) return undefined;
    const drive = look.figure(`${slide}-drive-volts-kept`);
    const winding = look.figure(`${slide}-useful-volts`);
    return atMost({
      id: `${slide}-supply-voltage`,
      label: `Voltage of the motor supply, ${slideWords[slide]}`,
      value: look.figure(`${slide}-supply-volts`),
      limit: winding ? smallestOf({ drive, winding }) : drive,
      comfort: 1.1,
      remedy: drive
        ? 'Turn the supply down, or take drives for a higher voltage: a volt too many kills a drive at once.'
        : 'Needs the highest voltage that the drives stand: read it in their data sheet before anything is connected.',
      ...(!drive && { needs: ['drive-highest-volts'] }),
      decisions: ['motor-supply', 'motor-size', 'drives'],
    });
  };

const current: CheckRule = (look) => {
  if (!lowVoltage(look) || !look.option('axis-motor')) return undefined;
  const limit = look.figure('motor-supply-current');
  const value = look.figure('motor-supply-rating');
  const slides = (['carriage', 'cross'] as const).filter((slide) => isDriven(look, slide));
  const currents = slides.filter((slide) => !look.figure(`${slide}-motor-current`));
  const needs = [
    ...currents.map((slide) => `${slide}-motor-current`),
    ...(value ? [] : ['motor-supply-amps']),
  ];
  return atLeastLimit({
    id: 'motor-supply-current',
    label: 'Current of the motor supply',
    value,
    limit,
    comfort: 1.2,
    remedy:
      needs.length > 0
        ? 'Needs the currents of motors and supply: read them on their plates.'
        : 'A supply for more current, or a second one. Logic, sensors and relays get a small supply of their own.',
    ...(needs.length > 0 && { needs }),
    decisions: ['motor-supply', 'motor-size', 'axis-motor'],
  });
};

const torqueLimit =
  (slide: Slide): CheckRule =>
  (look) => {
    if (!look.chosen('axis-motor', ...usesServos) || !isDriven(look, slide) || !hasScrew(look, slide))
      return undefined;
    const remedy =
      'Set a torque limit in the drive at or below this figure, read it back after the power was off, and enter it under your own figures.';
    const value = look.figure(`${slide}-peak-torque`);
    const limit = look.figure(`${slide}-torque-setting`);
    return atMost({
      id: `${slide}-torque-limit`,
      label: `Most torque of the servo against what the screw and its bearing stand, ${slideWords[slide]}`,
      comfort: 1.1,
      ...judged(look, slide, remedy, { value, limit }),
      testWhen: 'at the first enable, belt off and a hand on the stop',
      decisions: ['axis-motor', 'motor-size'],
    });
  };

/** Nothing on paper shows what meets what at the ends of the travel: it is tried by hand. */
const clearance: CheckRule = (look) => {
  const value = look.measured('tightest-clearance');
  return atLeastLimit({
    id: 'slide-clearance',
    label: 'Clearance at the four corners of the travel',
    value,
    limit: usual(0.005, 'm', 'a finger’s breadth is better; common practice'),
    comfort: 2,
    remedy: value
      ? 'Move the stop or the switch inwards, or the motor, guard or bracket out of the way.'
      : 'Needs the tightest gap between saddle, cross motor, guard, tailstock and chuck jaws, found by hand with the drives off.',
    ...(!value && { needs: ['tightest-clearance'] }),
    testWhen: 'before the first powered move, by hand, and again with the largest chuck and the longest tool',
    decisions: ['cross-motor-place', 'carriage-coupling', 'tool-holding'],
  });
};

/** Supply of the drives, limits of servos, and room to move. */
export const checks: readonly CheckRule[] = [
  voltage('carriage'),
  voltage('cross'),
  current,
  torqueLimit('carriage'),
  torqueLimit('cross'),
  clearance,
];
