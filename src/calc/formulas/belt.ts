import type { Formula } from '../core/formula.ts';

const geometry = {
  ref: 'Shigley’s Mechanical Engineering Design, chapter 17',
  at: 'open belt, equations for wrap and length',
} as const;

/** Diameter on which the belt's teeth stand true, m, of a pulley. */
const pitchDiameter = (teeth: number, pitch: number): number => (teeth * pitch) / Math.PI;

/** Half the angle, rad, by which the smaller pulley is wrapped less than half-way round. */
const leaning = (large: number, small: number, centres: number): number =>
  Math.asin((large - small) / (2 * centres));

/** Exact length of an open belt, m, from pitch diameters and centre distance. NaN where no belt can lie. */
function openBelt(large: number, small: number, centres: number): number {
  const lean = leaning(large, small, centres);
  const straight = Math.sqrt(4 * centres ** 2 - (large - small) ** 2);
  return straight + (large * (Math.PI + 2 * lean) + small * (Math.PI - 2 * lean)) / 2;
}

type Pulleys = { teethSmall: number; teethLarge: number; pitch: number };
const pulleyInputs = { teethSmall: '1', teethLarge: '1', pitch: 'm' } as const;

/** Length of an open toothed belt on its pitch line, m. */
export const beltLength: Formula<Pulleys & { centreDistance: number }> = {
  id: 'belt-length',
  label: 'Length of the belt',
  equation:
    'length = √(4 × centreDistance² − (D − d)²) + ½ × (D × θD + d × θd), D and d = teeth × pitch ÷ π, θ the wraps',
  tex: 'L = \\sqrt{4C^2-(D-d)^2}+\\tfrac12\\left(D\\theta_D+d\\theta_d\\right)',
  inputs: { ...pulleyInputs, centreDistance: 'm' },
  unit: 'm',
  source: geometry,
  valid: {},
  compute: ({ teethSmall, teethLarge, pitch, centreDistance }) =>
    openBelt(pitchDiameter(teethLarge, pitch), pitchDiameter(teethSmall, pitch), centreDistance),
};

/**
 * Centre distance, m, that a belt of so many teeth gives: the exact length solved by Newton's steps. The length
 * bends upwards over the distance, so steps from a distance that is too long never overshoot. NaN for a belt too
 * short for its pulleys to lie side by side.
 */
function centresFor(length: number, large: number, small: number): number {
  let centres = length / 2 - (Math.PI / 4) * (large + small);
  for (let step = 0; step < 40; step += 1) {
    const slope = Math.sqrt(4 * centres ** 2 - (large - small) ** 2) / centres;
    centres -= (openBelt(large, small, centres) - length) / slope;
  }
  return centres >= (large + small) / 2 ? centres : Number.NaN;
}

/** Centre distance of two pulleys under a given belt, m. */
export const beltCentreDistance: Formula<Pulleys & { beltTeeth: number }> = {
  id: 'belt-centre-distance',
  label: 'Centre distance of the pulleys',
  equation: 'centreDistance so that belt length = beltTeeth × pitch (solved step by step)',
  tex: 'C:\\quad L(C) = N_b\\,p',
  inputs: { ...pulleyInputs, beltTeeth: '1' },
  unit: 'm',
  source: { ...geometry, at: 'open belt length, solved for the centre distance' },
  valid: {},
  compute: ({ teethSmall, teethLarge, pitch, beltTeeth }) =>
    centresFor(beltTeeth * pitch, pitchDiameter(teethLarge, pitch), pitchDiameter(teethSmall, pitch)),
};

/** Least distance of the shafts, m: there the pitch circles touch. Flanges and an idler ask for more. */
export const beltLeastCentres: Formula<Pulleys> = {
  id: 'belt-least-centres',
  label: 'Least distance of two pulleys',
  equation: 'distance = (teethSmall + teethLarge) × pitch ÷ 2π',
  tex: 'C_0 = \\frac{(N_d + N_D)\\,p}{2\\pi}',
  inputs: pulleyInputs,
  unit: 'm',
  source: { ref: 'Makers’ tables of toothed pulleys', at: 'pitch diameter = teeth × pitch ÷ π' },
  valid: {},
  compute: ({ teethSmall, teethLarge, pitch }) =>
    (pitchDiameter(teethSmall, pitch) + pitchDiameter(teethLarge, pitch)) / 2,
};

/** Teeth of the smaller pulley that the belt holds at once. */
export const beltTeethInMesh: Formula<Pulleys & { centreDistance: number }> = {
  id: 'belt-teeth-in-mesh',
  label: 'Teeth in mesh on the smaller pulley',
  equation: 'teeth = teethSmall × (π − 2 × asin((D − d) ÷ (2 × centreDistance))) ÷ 2π',
  tex: 'Z_m = \\frac{N_d\\,\\theta_d}{2\\pi}',
  inputs: { ...pulleyInputs, centreDistance: 'm' },
  unit: '1',
  source: geometry,
  valid: {},
  compute: ({ teethSmall, teethLarge, pitch, centreDistance }) => {
    const large = pitchDiameter(teethLarge, pitch);
    const lean = leaning(large, pitchDiameter(teethSmall, pitch), centreDistance);
    return (teethSmall * (Math.PI - 2 * lean)) / (2 * Math.PI);
  },
};

/** Share of its rated pull that a belt may carry with so many teeth in mesh: 1 for six or more. NaN below four. */
export const beltMeshFactor: Formula<{ teethInMesh: number }> = {
  id: 'belt-mesh-factor',
  label: 'Share of the belt rating left with few teeth in mesh',
  equation: 'factor = 1 from 6 teeth, 0.7 from 5, 0.5 from 4',
  tex: 'k_m = 1,\\;0.7,\\;0.5 \\quad (Z_m \\ge 6,\\;5,\\;4)',
  inputs: { teethInMesh: '1' },
  unit: '1',
  source: { ref: 'Tsubaki, timing belt technical data', at: 'engagement correction factor' },
  valid: { teethInMesh: [4, 200] },
  compute: ({ teethInMesh }) =>
    teethInMesh >= 6 ? 1 : teethInMesh >= 5 ? 0.7 : teethInMesh >= 4 ? 0.5 : Number.NaN,
};

/** Pull at the belt's teeth, N, that a torque at a pulley makes. */
export const beltToothForce: Formula<{ torque: number; teeth: number; pitch: number }> = {
  id: 'belt-tooth-force',
  label: 'Pull at the belt teeth',
  equation: 'force = 2π × torque ÷ (teeth × pitch)',
  tex: 'F_t = \\frac{2\\pi\\,T}{N\\,p}',
  inputs: { torque: 'N·m', teeth: '1', pitch: 'm' },
  unit: 'N',
  source: { ref: 'Tsubaki, timing belt technical data', at: 'effective tension from torque' },
  valid: {},
  unverified: 'The maker prints the equation; no worked pull with all its figures is known to us.',
  compute: ({ torque, teeth, pitch }) => (2 * torque) / pitchDiameter(teeth, pitch),
};

export const beltFormulas = [
  beltLength,
  beltCentreDistance,
  beltLeastCentres,
  beltTeethInMesh,
  beltMeshFactor,
  beltToothForce,
] as const;
