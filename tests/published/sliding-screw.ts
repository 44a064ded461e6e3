import {
  screwLeadAngle,
  slidingScrewEfficiency,
  slidingScrewTorque,
} from '../../src/calc/formulas/sliding-screw.ts';
import { type PublishedRow, row } from './row.ts';

const inch = 0.0254;
const poundForce = 4.4482216152605;
const degree = Math.PI / 180;

const mott = {
  ref: 'Mott, Machine Elements in Mechanical Design, 4th edition',
  at: 'Example 17-1, p. 703',
} as const;

/** Acme screw, four threads an inch, without a collar. */
const acme = {
  meanDiameter: 1.3429 * inch,
  lead: 0.25 * inch,
  friction: 0.15,
  flankAngle: 14.5 * degree,
  collarFriction: 0,
  collarDiameter: 0,
};

const shigley = { ref: "Shigley's Mechanical Engineering Design", at: 'Example 8-1' } as const;

/** Square thread of two starts with a collar. */
const square = {
  meanDiameter: 0.03,
  lead: 0.008,
  friction: 0.08,
  flankAngle: 0,
  collarFriction: 0.08,
  collarDiameter: 0.04,
};

const ownArithmetic = { by: 0.005, because: 'the book rounds on the way and comes out 0.3 % low' } as const;

export const slidingScrewRows: readonly PublishedRow[] = [
  row(screwLeadAngle, {
    what: 'four threads an inch on 1.3429 inches',
    source: mott,
    provenance: 'seen',
    inputs: { meanDiameter: acme.meanDiameter, lead: acme.lead },
    as: (angle) => angle / degree,
    printed: '3.39',
    unit: '°',
  }),
  row(slidingScrewTorque, {
    what: '12,500 lb raised by an Acme screw',
    source: mott,
    provenance: 'seen',
    inputs: { ...acme, force: 12500 * poundForce, direction: 'raise' },
    as: (torque) => torque / (poundForce * inch),
    printed: '1809',
    unit: 'lb·in',
    looser: ownArithmetic,
  }),
  row(slidingScrewTorque, {
    what: '12,500 lb lowered by an Acme screw',
    source: { ...mott, at: 'Example 17-1, equation 17-11' },
    provenance: 'memory',
    inputs: { ...acme, force: 12500 * poundForce, direction: 'lower' },
    as: (torque) => torque / (poundForce * inch),
    printed: '796',
    unit: 'lb·in',
  }),
  row(slidingScrewEfficiency, {
    what: 'Acme screw, four threads an inch, friction 0.15',
    source: mott,
    provenance: 'seen',
    inputs: acme,
    printed: '0.275',
    unit: '1',
    looser: ownArithmetic,
  }),
  row(slidingScrewTorque, {
    what: '6.4 kN raised by a square thread of two starts with a collar',
    source: shigley,
    provenance: 'memory',
    inputs: { ...square, force: 6400, direction: 'raise' },
    printed: '26.18',
    unit: 'N·m',
  }),
  row(slidingScrewTorque, {
    what: '6.4 kN lowered by a square thread of two starts with a collar',
    source: shigley,
    provenance: 'memory',
    inputs: { ...square, force: 6400, direction: 'lower' },
    printed: '9.77',
    unit: 'N·m',
  }),
  row(slidingScrewEfficiency, {
    what: 'square thread of two starts with a collar',
    source: shigley,
    provenance: 'memory',
    inputs: square,
    printed: '0.311',
    unit: '1',
  }),
];
