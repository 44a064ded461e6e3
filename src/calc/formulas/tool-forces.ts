import type { Formula } from '../core/formula.ts';

const ISAKOV = 'E. Isakov, Cutting Tool Engineering, February 2013';
const onlyAShare = (share: string) =>
  `The source gives only the share, ${share} of the cutting force, and calls it a rule of thumb; no worked force is printed.`;

/** Force along the bed that the carriage screw must give while turning, N: a share of the cutting force. */
export const feedForce: Formula<{ cuttingForce: number; ratio: number }> = {
  id: 'feed-force',
  label: 'Feed force',
  equation: 'feed force = ratio × cutting force',
  tex: 'F_f = r\\,F_c',
  inputs: { cuttingForce: 'N', ratio: '1' },
  unit: 'N',
  source: { ref: ISAKOV, at: 'feed force about 0.50 of the cutting force' },
  valid: { ratio: [0.3, 0.6] },
  unverified: onlyAShare('0.50'),
  compute: ({ cuttingForce, ratio }) => ratio * cuttingForce,
};

/** Force that pushes the tool away from the work along the cross slide, N: a share of the cutting force. */
export const passiveForce: Formula<{ cuttingForce: number; ratio: number }> = {
  id: 'passive-force',
  label: 'Force pushing the tool back (passive force)',
  equation: 'passive force = ratio × cutting force',
  tex: 'F_p = r\\,F_c',
  inputs: { cuttingForce: 'N', ratio: '1' },
  unit: 'N',
  source: { ref: ISAKOV, at: 'radial force about 0.25 of the cutting force' },
  valid: { ratio: [0.2, 0.5] },
  unverified: onlyAShare('0.25'),
  compute: ({ cuttingForce, ratio }) => ratio * cuttingForce,
};

/** Torque that the cut asks of the spindle, N·m: the force at half of the diameter in m. Plain mechanics. */
export const cuttingTorque: Formula<{ cuttingForce: number; diameter: number }> = {
  id: 'cutting-torque',
  label: 'Torque the cut asks of the spindle',
  equation: 'torque = cutting force × diameter ÷ 2',
  tex: 'M = \\frac{F_c\\,D}{2}',
  inputs: { cuttingForce: 'N', diameter: 'm' },
  unit: 'N·m',
  source: { ref: 'plain mechanics', at: 'force times radius' },
  valid: {},
  unverified: 'Force times radius; no published worked figure for turning is known.',
  compute: ({ cuttingForce, diameter }) => (cuttingForce * diameter) / 2,
};

/**
 * How much too large the work comes out, m on diameter, with the tool `heightOffset` (m) above or below centre,
 * set right at `zeroDiameter` and turned at `diameter`. Plain geometry. A tool above centre also rubs.
 */
export const toolHeightError: Formula<{ heightOffset: number; zeroDiameter: number; diameter: number }> = {
  id: 'tool-height-error',
  label: 'Error on diameter from a tool off centre height',
  equation:
    'error = 2 × √((√(D0² ÷ 4 − h²) − (D0 − D) ÷ 2)² + h²) − D, h the height offset, D0 the zero diameter',
  tex: 'e = 2\\sqrt{\\left(\\sqrt{\\tfrac{D_0^2}{4} - h^2} - \\tfrac{D_0 - D}{2}\\right)^2 + h^2} - D',
  inputs: { heightOffset: 'm', zeroDiameter: 'm', diameter: 'm' },
  unit: 'm',
  source: { ref: 'plain geometry', at: 'tool tip, centre and work as a right-angled triangle' },
  valid: {},
  unverified: 'Geometry of a right-angled triangle; no published worked figure is known.',
  compute: ({ heightOffset, zeroDiameter, diameter }) => {
    const atZero = Math.sqrt((zeroDiameter / 2) ** 2 - heightOffset ** 2);
    const across = atZero - (zeroDiameter - diameter) / 2;
    return 2 * Math.hypot(across, heightOffset) - diameter;
  },
};

export const toolForceFormulas = [feedForce, passiveForce, cuttingTorque, toolHeightError] as const;
