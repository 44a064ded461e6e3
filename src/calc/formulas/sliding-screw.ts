import type { Formula } from '../core/formula.ts';

/** Raising: the torque pushes the nut against the force. Lowering: the force helps. */
export type ScrewDirection = 'raise' | 'lower';

/** A plain nut on a plain screw. `flankAngle` is half of the thread's angle; collar figures are 0 without a collar. */
type PlainScrew = {
  meanDiameter: number;
  lead: number;
  friction: number;
  flankAngle: number;
  collarFriction: number;
  collarDiameter: number;
};

const plainScrewInputs = {
  meanDiameter: 'm',
  lead: 'm',
  friction: '1',
  flankAngle: 'rad',
  collarFriction: '1',
  collarDiameter: 'm',
} as const;

const mott = 'Mott, Machine Elements in Mechanical Design, 4th edition';

const leadSlope = (meanDiameter: number, lead: number): number => lead / (Math.PI * meanDiameter);

/** Slope of the thread at its mean diameter, rad. */
export const screwLeadAngle: Formula<{ meanDiameter: number; lead: number }> = {
  id: 'screw-lead-angle',
  label: 'Slope of the thread (lead angle)',
  equation: 'angle = atan(lead ÷ (π × meanDiameter))',
  tex: '\\lambda = \\arctan\\frac{l}{\\pi d_m}',
  inputs: { meanDiameter: 'm', lead: 'm' },
  unit: 'rad',
  source: { ref: mott, at: 'Example 17-1, p. 703' },
  valid: {},
  compute: ({ meanDiameter, lead }) => Math.atan(leadSlope(meanDiameter, lead)),
};

/** Torque at a sliding screw, N·m. A lowering torque below nought means that the load runs down by itself. */
export const slidingScrewTorque: Formula<PlainScrew & { force: number; direction: ScrewDirection }> = {
  id: 'sliding-screw-torque',
  label: 'Torque to turn a sliding screw',
  equation:
    'torque = force × meanDiameter ÷ 2 × (friction ± cos(flankAngle) × tan λ) ÷ (cos(flankAngle) ∓ friction × tan λ) + force × collarFriction × collarDiameter ÷ 2; upper signs to raise',
  tex: 'T = \\frac{F d_m}{2}\\,\\frac{f \\pm \\cos\\varphi\\tan\\lambda}{\\cos\\varphi \\mp f\\tan\\lambda} + \\frac{F f_c d_c}{2}',
  inputs: { force: 'N', ...plainScrewInputs, direction: 'case' },
  unit: 'N·m',
  source: { ref: mott, at: 'Example 17-1, p. 703; lowering by equation 17-11' },
  valid: { friction: [0.08, 0.2] },
  compute: ({ force, meanDiameter, lead, friction, flankAngle, direction, ...collar }) => {
    const slope = leadSlope(meanDiameter, lead) * (direction === 'raise' ? 1 : -1);
    const flank = Math.cos(flankAngle);
    const thread = (meanDiameter / 2) * ((friction + flank * slope) / (flank - friction * slope));
    return force * (thread + (collar.collarFriction * collar.collarDiameter) / 2);
  },
};

/** Share of the turning work that reaches the nut. Below about 0.5 the nut does not drive the screw back at rest. */
export const slidingScrewEfficiency: Formula<PlainScrew> = {
  id: 'sliding-screw-efficiency',
  label: 'Efficiency of a sliding screw',
  equation: 'efficiency = force × lead ÷ (2π × raising torque), the force drops out',
  tex: '\\eta = \\frac{F\\,l}{2\\pi\\,T_R}',
  inputs: plainScrewInputs,
  unit: '1',
  source: { ref: mott, at: 'Example 17-1, p. 703' },
  valid: { friction: [0.08, 0.2] },
  compute: (screw) =>
    screw.lead / (2 * Math.PI * slidingScrewTorque.compute({ ...screw, force: 1, direction: 'raise' })),
};

export const slidingScrewFormulas = [screwLeadAngle, slidingScrewTorque, slidingScrewEfficiency] as const;
