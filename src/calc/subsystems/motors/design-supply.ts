import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf, smallestOf, sumOf } from '../../core/steps.ts';
import { stepperSupplyCurrent, stepperSupplyVoltage } from '../../formulas/stepper.ts';
import { isDriven, memory, type Slide, slideFigure, usual } from './axis.ts';
import { motorTorqueFor } from './axis-rapid.ts';
import { motorKind } from './motors-table.ts';

const slides: readonly Slide[] = ['carriage', 'cross'];

const onBoard = (look: Look) => look.chosen('drives', 'multi-axis-board');

/** V that the drive of a slide stands: as measured, else what is sold for a motor of that size. */
function driveVolts(look: Look, slide: Slide): Quantity | undefined {
  const own = look.measured('drive-highest-volts');
  const usualDrive = motorKind(look, slide)?.driveVolts;
  if (own || usualDrive === undefined) return own;
  return onBoard(look)
    ? chosen(45, 'V', 'drives', 'multi-axis-board', memory)
    : chosen(usualDrive, 'V', 'motor-size', look.option('motor-size') ?? '', memory);
}

/** V of a supply set for drives that stand so much: four fifths of it, as the enclosed ones are sold and set. */
function setTo(drive: number): number {
  if (drive >= 80) return 64;
  return drive >= 50 ? 40 : 36;
}

/** With motors of two sizes on a transformer the small drive has an enclosed supply of its own: the plan buys it. */
const apart = (look: Look, slide: Slide): boolean =>
  look.chosen('motor-size', 'face-57-and-86') && (driveVolts(look, slide)?.value ?? 0) < 80;

/** What feeds a slide: the transformer, or an enclosed supply. */
function fedBy(look: Look, slide: Slide): string | undefined {
  const supply = look.option('motor-supply');
  return supply === 'transformer-supply' && apart(look, slide) ? 'enclosed-supply' : supply;
}

/** V that the drive of a slide gets. A transformer rises with no load, and that is the figure that counts. */
function supplyVolts(look: Look, slide: Slide): Quantity | undefined {
  const own = look.measured('motor-supply-volts');
  if (own) return own;
  const asked = look.option('motor-supply') ?? '';
  const supply = fedBy(look, slide);
  if (supply === 'transformer-supply')
    return chosen(60, 'V', 'motor-supply', asked, 'a transformer of 55 V, a tenth more with no load');
  const drive = supply === 'enclosed-supply' ? driveVolts(look, slide) : undefined;
  const why = 'an enclosed supply, adjusted to suit the drive; read it with a meter';
  return drive && chosen(setTo(drive.value), 'V', 'motor-supply', asked, why);
}

/** Low-voltage drives: what is fed straight from the mains has no supply to size. */
export const lowVoltage = (look: Look): boolean => !look.chosen('axis-motor', 'mains-servo');

function neededAmps(look: Look): Quantity | undefined {
  if (!lowVoltage(look)) return undefined;
  const driven = slides.filter((slide) => isDriven(look, slide));
  const currents = driven.map((slide) => look.figure(`${slide}-motor-current`));
  const phaseCurrents = currents.filter((current) => current !== undefined);
  if (phaseCurrents.length < currents.length) return undefined;
  const tailstock = look.chosen('driven-axes', 'both-and-tailstock')
    ? [chosen(4.2, 'A', 'driven-axes', 'both-and-tailstock', memory)]
    : [];
  return derive(stepperSupplyCurrent, { phaseCurrents: [...phaseCurrents, ...tailstock] });
}

/** W of the enclosed supply that is sold for a voltage; drives of two sizes, or two large ones, get one each. */
function soldWatts(look: Look, slide: Slide): Quantity {
  const large = (driveVolts(look, slide)?.value ?? 0) >= 80;
  return chosen(large ? 600 : 400, 'W', 'motor-supply', 'enclosed-supply', memory);
}

function ratedAmps(look: Look): Quantity | undefined {
  const own = look.measured('motor-supply-amps');
  if (own || !lowVoltage(look)) return own;
  const driven = slides.filter((slide) => isDriven(look, slide));
  const onTransformer = driven.some((slide) => fedBy(look, slide) === 'transformer-supply');
  const enclosed = driven.filter((slide) => fedBy(look, slide) === 'enclosed-supply');
  const oneForAll = !look.chosen('motor-size', 'face-57-and-86', 'face-86-both');
  const each = (oneForAll ? enclosed.slice(0, 1) : enclosed).map((slide) => [
    slide,
    quotientOf('A', soldWatts(look, slide), look.figure(`${slide}-supply-volts`)),
  ]);
  const transformer = chosen(8.3, 'A', 'motor-supply', 'transformer-supply', '500 VA at 60 V');
  return sumOf({ ...(onTransformer ? { transformer } : {}), ...Object.fromEntries(each) });
}

/** Torque at which a slide pushes as hard as its weakest part stands, N·m: what a servo is limited to. */
const torqueSetting = (look: Look, slide: Slide): Quantity | undefined =>
  motorTorqueFor(
    look,
    slide,
    smallestOf({ bearing: look.figure(`${slide}-end-rating`), screw: look.figure(`${slide}-buckling-load`) }),
  );

const supplyFigures = (slide: Slide): readonly Figure[] => [
  slideFigure(slide, 'drive-volts', 'Highest voltage that the drive stands', (look) =>
    lowVoltage(look) ? driveVolts(look, slide) : undefined,
  ),
  slideFigure(slide, 'supply-volts', 'Voltage of the motor supply', (look) =>
    lowVoltage(look) ? supplyVolts(look, slide) : undefined,
  ),
  slideFigure(slide, 'useful-volts', 'Voltage above which the winding gains little', (look) =>
    derive(stepperSupplyVoltage, { inductance: look.figure(`${slide}-motor-inductance`) }),
  ),
  slideFigure(slide, 'drive-volts-kept', 'Voltage with a reserve under that of the drive', (look) =>
    productOf('V', {
      drive: look.figure(`${slide}-drive-volts`),
      share: usual(0.9, '1', 'a braking motor lifts the voltage by up to a tenth; common practice'),
    }),
  ),
  slideFigure(slide, 'torque-setting', 'Highest torque to allow', (look) => torqueSetting(look, slide)),
];

/** Voltage and current for the drives, and the torque that the mechanics allow. */
export const figures: readonly Figure[] = [
  ...slides.flatMap(supplyFigures),
  { id: 'motor-supply-current', label: 'Current that the motor drives need', of: neededAmps },
  { id: 'motor-supply-rating', label: 'Current that the motor supply gives', of: ratedAmps },
];
