import type { Look } from '../../core/figure.ts';
import type { Quantity } from '../../core/quantity.ts';
import { cameWithMachine, type Slide, slideWords } from './axis.ts';

/** Questions that decide how hard and how fast a slide is pushed. */
export const driveQuestions: Readonly<Record<Slide, readonly string[]>> = {
  carriage: ['carriage-coupling', 'motor-size', 'axis-motor', 'carriage-drive'],
  cross: ['motor-size', 'axis-motor', 'cross-screw'],
};

/** Questions that decide what the screw stands. */
export const screwQuestions: Readonly<Record<Slide, readonly string[]>> = {
  carriage: ['carriage-screw-ends', 'carriage-drive', 'carriage-coupling'],
  cross: ['cross-screw', 'cross-screw-hold'],
};

/** Which of the figures that only the owner can give are missing: the lead of a screw that is there, a found motor. */
export function missingDrive(look: Look, slide: Slide): readonly string[] {
  const lead = look.figure(`${slide}-lead`) ? [] : [`${slide}-lead`];
  const torque = look.figure(`${slide}-motor-torque`) ? [] : [`${slide}-motor-torque`];
  return [...lead, ...torque];
}

const names: Readonly<Record<string, string>> = { lead: 'the lead of the screw', torque: 'the motor torque' };

/** Value and limit of a check, as far as they are known. */
interface Sides {
  readonly value: Quantity | undefined;
  readonly limit: Quantity | undefined;
}

/** Both sides of a check on the drive with its remedy, or with what to measure first where it cannot be judged. */
export function judged(look: Look, slide: Slide, remedy: string, { value, limit }: Sides) {
  const needs = value && limit ? [] : missingDrive(look, slide);
  if (needs.length === 0) return { value, limit, remedy };
  const said = needs.map((id) => names[id.endsWith('lead') ? 'lead' : 'torque']).join(' and ');
  const measure = `Needs ${said} of the ${slideWords[slide]}: read the data sheet or measure it.`;
  return { value, limit, remedy: measure, needs };
}

/** There is a screw that we know: a new one, or the one the lathe came with. */
export const hasScrew = (look: Look, slide: Slide): boolean =>
  look.figure(`${slide}-nut-stiffness`) !== undefined;

/** Motor, pulleys or coupling are fitted by the builder. */
export const fitsDrive = (look: Look, slide: Slide): boolean =>
  !cameWithMachine(look) && look.figure(`${slide}-drive-efficiency`) !== undefined;
