import type { Formula } from '../core/formula.ts';

const MITSUBISHI = 'Mitsubishi Materials, technical information, formulas for turning';
const KIENZLE_RANGE = { feed: [0.05e-3, 2.5e-3] } as const;

/** Speed of the work past the tool, m/s. Diameter in m, spindle in rev/s. Mitsubishi Materials, formulas for turning. */
export const surfaceSpeed: Formula<{ diameter: number; speed: number }> = {
  id: 'surface-speed',
  label: 'Cutting speed at the diameter',
  equation: 'surface speed = π × diameter × speed',
  tex: 'v_c = \\pi\\,D\\,n',
  inputs: { diameter: 'm', speed: 'rev/s' },
  unit: 'm/s',
  source: { ref: MITSUBISHI, at: 'cutting speed' },
  valid: {},
  compute: ({ diameter, speed }) => Math.PI * diameter * speed,
};

/** Spindle speed for a cutting speed, rev/s; the inverse of `surfaceSpeed`. ISCAR rotating-tool catalogue 2017. */
export const spindleSpeedFor: Formula<{ surfaceSpeed: number; diameter: number }> = {
  id: 'spindle-speed-for',
  label: 'Spindle speed for a cutting speed',
  equation: 'speed = surface speed ÷ (π × diameter)',
  tex: 'n = \\frac{v_c}{\\pi\\,D}',
  inputs: { surfaceSpeed: 'm/s', diameter: 'm' },
  unit: 'rev/s',
  source: { ref: 'ISCAR rotating-tool catalogue 2017', at: 'p. 601, spindle speed' },
  valid: {},
  compute: ({ surfaceSpeed, diameter }) => surfaceSpeed / (Math.PI * diameter),
};

type Chip = { kc11: number; mc: number; feed: number; enteringAngle: number };

/**
 * Force for each square metre of chip, Pa, by Kienzle: the 1 mm figure `kc11` (Pa) raised or lowered by the
 * chip thickness. Feed in m/rev; the entering angle in rad lies between cutting edge and feed, π/2 at a square
 * shoulder. The exponent acts on feed × sin(angle), never on the feed alone. Sharp tool, depth over 4 × feed.
 */
export const specificCuttingForce: Formula<Chip> = {
  id: 'specific-cutting-force',
  label: 'Cutting force for each square millimetre of chip',
  equation: 'kc = kc11 × (feed × sin(entering angle) ÷ 1 mm) ^ −mc',
  tex: 'k_c = k_{c1.1}\\left(\\frac{f\\,\\sin\\kappa}{1\\,\\mathrm{mm}}\\right)^{-m_c}',
  inputs: { kc11: 'Pa', mc: '1', feed: 'm/rev', enteringAngle: 'rad' },
  unit: 'Pa',
  source: { ref: 'O. Kienzle, VDI-Z 94 (1952)', at: 'law of the specific cutting force' },
  valid: KIENZLE_RANGE,
  compute: ({ kc11, mc, feed, enteringAngle }) => kc11 * (1000 * feed * Math.sin(enteringAngle)) ** -mc,
};

/** Cutting force along the cutting speed, N: specific force × depth × feed, with depth in m. Kienzle. */
export const cuttingForce: Formula<Chip & { depth: number }> = {
  id: 'cutting-force',
  label: 'Cutting force',
  equation: 'cutting force = specific cutting force × depth × feed',
  tex: 'F_c = k_c\\,a_p\\,f',
  inputs: { kc11: 'Pa', mc: '1', depth: 'm', feed: 'm/rev', enteringAngle: 'rad' },
  unit: 'N',
  source: { ref: 'O. Kienzle, VDI-Z 94 (1952)', at: 'cutting force from the chip area' },
  valid: KIENZLE_RANGE,
  compute: ({ depth, ...chip }) => specificCuttingForce.compute(chip) * depth * chip.feed,
};

/** Power that the motor gives for a cut, W; efficiency of everything between motor and cut as a plain number. */
export const cuttingPower: Formula<{ cuttingForce: number; surfaceSpeed: number; efficiency: number }> = {
  id: 'cutting-power',
  label: 'Power for the cut',
  equation: 'power = cutting force × surface speed ÷ efficiency',
  tex: 'P_c = \\frac{F_c\\,v_c}{\\eta}',
  inputs: { cuttingForce: 'N', surfaceSpeed: 'm/s', efficiency: '1' },
  unit: 'W',
  source: { ref: MITSUBISHI, at: 'cutting power for turning' },
  valid: { efficiency: [0, 1] },
  compute: ({ cuttingForce, surfaceSpeed, efficiency }) => (cuttingForce * surfaceSpeed) / efficiency,
};

export const cuttingFormulas = [
  surfaceSpeed,
  spindleSpeedFor,
  specificCuttingForce,
  cuttingForce,
  cuttingPower,
] as const;
