import type { Formula } from '../core/formula.ts';

const lecture = {
  ref: 'University of Utah, ME EN 7960 Precision Machine Design, ball-screw lecture',
  at: 'slide 4',
} as const;

/** Torque at the screw that pushes a force: N and m of lead a turn give N·m. Utah ball-screw lecture, slide 4. */
export const screwDriveTorque: Formula<{ force: number; lead: number; efficiency: number }> = {
  id: 'screw-drive-torque',
  label: 'Torque to turn the screw',
  equation: 'torque = force × lead ÷ (2π × efficiency)',
  tex: 'T = \\frac{F\\,l}{2\\pi\\,\\eta}',
  inputs: { force: 'N', lead: 'm', efficiency: '1' },
  unit: 'N·m',
  source: lecture,
  valid: { efficiency: [0, 1] },
  compute: ({ force, lead, efficiency }) => (force * lead) / (2 * Math.PI * efficiency),
};

/** Torque at the screw, N·m, with which a push on the nut tries to turn it. THK, section A15. */
export const screwBackDrivingTorque: Formula<{ force: number; lead: number; backEfficiency: number }> = {
  id: 'screw-back-driving-torque',
  label: 'Torque with which a push turns the screw back',
  equation: 'torque = force × lead × backEfficiency ÷ (2π)',
  tex: 'T_b = \\frac{F\\,l\\,\\eta_b}{2\\pi}',
  inputs: { force: 'N', lead: 'm', backEfficiency: '1' },
  unit: 'N·m',
  source: { ref: 'THK general catalogue, ball screws', at: 'section A15, efficiency' },
  valid: { backEfficiency: [0, 1] },
  unverified: 'The sources print the equation and the efficiency, but no worked torque is known to us.',
  compute: ({ force, lead, backEfficiency }) => (force * lead * backEfficiency) / (2 * Math.PI),
};

/**
 * Push at the slide, N, from torque at the motor, N·m. `ratio` is motor turns for one of the screw; `efficiency` is
 * the screw's alone, `beltEfficiency` that of the belt or gearbox between (1 for a motor coupled straight on).
 */
export const screwThrust: Formula<{
  torque: number;
  lead: number;
  efficiency: number;
  ratio: number;
  beltEfficiency: number;
}> = {
  id: 'screw-thrust',
  label: 'Push at the slide',
  equation: 'force = 2π × efficiency × beltEfficiency × ratio × torque ÷ lead',
  tex: 'F = \\frac{2\\pi\\,\\eta\\,\\eta_r\\,i\\,T}{l}',
  inputs: { torque: 'N·m', lead: 'm', efficiency: '1', ratio: '1', beltEfficiency: '1' },
  unit: 'N',
  source: { ...lecture, at: 'slide 4, solved for the force' },
  valid: { efficiency: [0, 1], beltEfficiency: [0, 1] },
  compute: ({ torque, lead, efficiency, ratio, beltEfficiency }) =>
    (2 * Math.PI * efficiency * beltEfficiency * ratio * torque) / lead,
};

export const screwDriveFormulas = [screwDriveTorque, screwBackDrivingTorque, screwThrust] as const;
