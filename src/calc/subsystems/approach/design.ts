import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, type Quantity } from '../../core/quantity.ts';
import { productOf, sumOf } from '../../core/steps.ts';
import { sparesFor } from '../../formulas/buying.ts';

const practice = 'common practice, no source; your drawing decides';
const count = (value: number, why: string): Quantity => assumed(value, '1', `${why}; ${practice}`);

const carriageDriven = (look: Look): boolean => !look.chosen('driven-axes', 'cross-slide-only');
const crossDriven = (look: Look): boolean => !look.chosen('driven-axes', 'carriage-only');
const tailstockDriven = (look: Look): boolean =>
  look.chosen('driven-axes', 'both-and-tailstock') || look.chosen('holes', 'motor-tailstock');

const newCarriageScrew = (look: Look): boolean =>
  look.chosen('carriage-drive', 'ball-screw-front', 'ball-screw-back', 'sliding-screw');
const hasSensor = (look: Look): boolean =>
  look.option('spindle-sensor') !== undefined && !look.chosen('spindle-sensor', 'no-sensor');

/** Brackets and plates that are bolted to the lathe. A training machine comes with its own. */
function brackets(look: Look): Quantity | undefined {
  if (look.chosen('which-lathe', 'dead-training-machine')) return undefined;
  const carriage = newCarriageScrew(look)
    ? count(4, 'carriage: two ends, the nut, the motor plate')
    : count(1, 'carriage: the motor plate');
  return sumOf({
    carriage: carriageDriven(look) ? carriage : count(0, 'no motor on the carriage'),
    cross: crossDriven(look)
      ? count(3, 'cross slide: the end, the nut, the motor plate')
      : count(0, 'no motor on the cross slide'),
    tailstock: count(tailstockDriven(look) ? 1 : 0, 'tailstock: the motor plate'),
    sensor: count(hasSensor(look) ? 1 : 0, 'spindle: the plate of the sensor'),
  });
}

const each = (look: Look, number: number, why: string): Quantity | undefined =>
  productOf('1', { brackets: look.figure('brackets'), each: count(number, why) });

/** Chance that one hole costs a drill or a tap. */
function breakChance(look: Look): Quantity | undefined {
  const own = look.measured('break-chance');
  if (own) return own;
  const byHand = look.chosen('mill-access', 'no-machine-tools');
  const drilled = byHand ? 0.06 : 0.03;
  const how = byHand ? 'a hand drill wanders and snaps' : 'drilled upright in a machine or a guide';
  const small = (look.fact('swing')?.value ?? 1) <= 0.22;
  return productOf('1', {
    drilled: assumed(drilled, '1', `${how}; common practice, no source`),
    casting: assumed(
      small ? 1.6 : 1,
      '1',
      small ? 'small lathes have the harder, thinner iron' : 'iron of ordinary hardness',
    ),
  });
}

const SURE = 0.95;

const toHave = (look: Look, holes: string): Quantity | undefined =>
  derive(sparesFor, {
    holes: look.figure(holes),
    breakChance: look.figure('hole-break-chance'),
    confidence: assumed(SURE, '1', '95 % sure to finish without waiting for the next parcel'),
  });

export const figures: readonly Figure[] = [
  { id: 'brackets', label: 'Brackets and plates bolted to the lathe', of: brackets },
  { id: 'cap-screws', label: 'Cap screws', of: (look) => each(look, 4, 'four screws a bracket') },
  { id: 'dowels', label: 'Dowels', of: (look) => each(look, 2, 'two dowels a bracket') },
  {
    id: 'holes-to-drill',
    label: 'Holes to drill in the castings',
    of: (look) => sumOf({ screws: look.figure('cap-screws'), dowels: look.figure('dowels') }),
  },
  { id: 'hole-break-chance', label: 'Chance that a hole breaks a drill or tap', of: breakChance },
  {
    id: 'drills-to-have',
    label: 'Tapping drills to have at hand',
    of: (look) => toHave(look, 'holes-to-drill'),
  },
  { id: 'taps-to-have', label: 'Small taps to have at hand', of: (look) => toHave(look, 'cap-screws') },
];
