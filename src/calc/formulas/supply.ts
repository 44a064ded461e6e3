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
