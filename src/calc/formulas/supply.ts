import type { Formula } from '../core/formula.ts';

/**
 * Current from the mains for a load behind a motor, a drive and a rectifier: shaft power over the efficiencies,
 * the power factor and the voltage. Common practice; the plate of the drive decides.
 */
export const inputCurrent: Formula<{
  power: number;
  efficiency: number;
  powerFactor: number;
  voltage: number;
}> = {
  id: 'input-current',
  label: 'Current from the mains',
  equation: 'I = P ÷ (efficiency × power factor × V)',
  tex: 'I = \\frac{P}{\\eta\\,\\cos\\varphi\\,V}',
  inputs: { power: 'W', efficiency: '1', powerFactor: '1', voltage: 'V' },
  unit: 'A',
  source: { ref: 'common practice, no source', at: 'power factor 0.6 to 0.7 for a drive without a choke' },
  valid: { power: [50, 3000], efficiency: [0.4, 0.95], powerFactor: [0.4, 1], voltage: [100, 240] },
  unverified:
    'Efficiency and power factor of small drives are read on their plates; no published worked figure is known.',
  compute: ({ power, efficiency, powerFactor, voltage }) => power / (efficiency * powerFactor * voltage),
};

/** Standard breaker sizes, amperes: NEC (NFPA 70) 240.6(A), as far as small machines go. */
export const breakerSizes = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100] as const;

/** Amperes for the conductor, and the largest breaker allowed. */
export interface MotorCircuit {
  readonly conductor: number;
  readonly breaker: number;
}

/**
 * Branch circuit of one motor, amperes: conductor for 125 % of its full-load current, inverse-time breaker of up to
 * 250 %, then up to the next standard size. Local code and a licensed electrician decide.
 */
export const motorCircuit: Formula<{ fullLoadCurrent: number }, MotorCircuit> = {
  id: 'motor-circuit',
  label: 'Conductor and breaker of a motor',
  equation: 'conductor = 1.25 × fullLoadCurrent; breaker = next size from 2.5 × fullLoadCurrent',
  tex: 'I_c = 1.25\\,I_{fl},\\quad I_b \\le 2.5\\,I_{fl}',
  inputs: { fullLoadCurrent: 'A' },
  unit: 'A',
  source: { ref: 'NEC (NFPA 70)', at: '430.22, 430.52 and 240.6(A), one motor, inverse-time breaker' },
  valid: { fullLoadCurrent: [1, 40] },
  compute: ({ fullLoadCurrent }) => ({
    conductor: 1.25 * fullLoadCurrent,
    breaker: breakerSizes.find((size) => size >= 2.5 * fullLoadCurrent * (1 - 1e-9)) ?? Number.NaN,
  }),
};

/**
 * Seconds in which a resistor takes a capacitor from one voltage down to another. A drive's own label and a meter
 * decide when it is safe to touch; this only says that it cannot be sooner.
 */
export const capacitorBleedTime: Formula<{
  capacitance: number;
  resistance: number;
  from: number;
  to: number;
}> = {
  id: 'capacitor-bleed-time',
  label: 'Time for a capacitor to run down',
  equation: 'time = resistance × capacitance × ln(from ÷ to)',
  tex: 't = R\\,C\\,\\ln\\frac{V_0}{V}',
  inputs: { capacitance: 'F', resistance: 'ohm', from: 'V', to: 'V' },
  unit: 's',
  source: { ref: 'OpenStax College Physics', at: 'DC circuits containing resistors and capacitors' },
  valid: {},
  compute: ({ capacitance, resistance, from, to }) => resistance * capacitance * Math.log(from / to),
};

export const supplyFormulas = [inputCurrent, motorCircuit, capacitorBleedTime] as const;
