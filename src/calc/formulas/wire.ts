import type { Formula } from '../core/formula.ts';

/** Diameter of the bare wire of an American gauge number: 0.127 mm at 36, each step the 39th root of 92. Metres. */
export const wireDiameter: Formula<{ gauge: number }> = {
  id: 'wire-diameter',
  label: 'Diameter of a wire by its gauge',
  equation: 'diameter = 0.127 mm × 92 ^ ((36 − gauge) ÷ 39)',
  tex: 'd = 0.127\\,\\mathrm{mm}\\cdot 92^{\\frac{36-n}{39}}',
  inputs: { gauge: '1' },
  unit: 'm',
  source: { ref: 'ASTM B258', at: 'gauge 36 is 0.005 in, gauge 0000 is 0.460 in' },
  valid: { gauge: [-3, 40] },
  compute: ({ gauge }) => 0.127e-3 * 92 ** ((36 - gauge) / 39),
};

/** Copper area of a round solid wire, square metres. */
export const wireArea: Formula<{ diameter: number }> = {
  id: 'wire-area',
  label: 'Copper area of a wire',
  equation: 'area = π × diameter² ÷ 4',
  tex: 'A = \\frac{\\pi d^2}{4}',
  inputs: { diameter: 'm' },
  unit: 'm²',
  source: { ref: 'OpenStax University Physics volume 2', at: 'resistance of a wire, worked example' },
  valid: {},
  compute: ({ diameter }) => (Math.PI * diameter ** 2) / 4,
};

/** Resistivity of standard annealed copper at 20 °C, ohm metres: 1/58 ohm for a metre of one square millimetre. */
const COPPER = 1 / 58e6;
/** Change of the resistance of that copper for each kelvin, of its resistance at 20 °C. */
const COPPER_PER_KELVIN = 0.00393;

/** Resistance of one copper conductor at its temperature, ohm. Strands lay longer than the cable and add about 2 %. */
export const wireResistance: Formula<{ area: number; length: number; temperature: number }> = {
  id: 'wire-resistance',
  label: 'Resistance of a wire',
  equation: 'resistance = length ÷ (58 MS/m × area) × (1 + 0.00393 × (temperature − 20))',
  tex: 'R = \\frac{L}{58\\,A}\\left(1 + 0.00393\\,(T - 20)\\right)',
  inputs: { area: 'm²', length: 'm', temperature: '°C' },
  unit: 'ohm',
  source: {
    ref: 'International annealed copper standard, IEC 60028',
    at: '1/58 ohm for 1 m of 1 mm² at 20 °C; 0.00393 per kelvin',
  },
  valid: { temperature: [0, 100] },
  compute: ({ area, length, temperature }) =>
    ((COPPER * length) / area) * (1 + COPPER_PER_KELVIN * (temperature - 20)),
};

/**
 * What a resistance measured at a temperature is multiplied by to give the resistance at 20 °C. The cable standard
 * uses 0.004 a kelvin for its table, not the 0.00393 of annealed copper.
 */
export const conductorTemperatureFactor: Formula<{ temperature: number }> = {
  id: 'conductor-temperature-factor',
  label: 'Measured resistance brought to 20 °C',
  equation: 'factor = 1 ÷ (1 + 0.004 × (temperature − 20))',
  tex: 'k_t = \\frac{1}{1 + 0.004\\,(T - 20)}',
  inputs: { temperature: '°C' },
  unit: '1',
  source: { ref: 'IEC 60228', at: 'annex, temperature correction factors for copper' },
  valid: { temperature: [5, 100] },
  compute: ({ temperature }) => 1 / (1 + 0.004 * (temperature - 20)),
};

export type Circuit = 'dc' | 'single-phase' | 'three-phase';

/** How many times the drop of one conductor is lost: out and back, or between two lines of three. */
const CONDUCTORS: Readonly<Record<Circuit, number>> = {
  dc: 2,
  'single-phase': 2,
  'three-phase': Math.sqrt(3),
};

/**
 * Volts lost along a cable at power factor 1, its inductance left out, which is fair up to about 16 mm².
 * `length` is one way. Three-phase: between lines.
 */
export const voltageDrop: Formula<{
  current: number;
  length: number;
  area: number;
  temperature: number;
  circuit: Circuit;
}> = {
  id: 'voltage-drop',
  label: 'Volts lost in the cable',
  equation: 'drop = k × current × resistance of one conductor; k = 2, or √3 for three phases',
  tex: '\\Delta V = k\\,I\\,R,\\quad k = 2 \\text{ or } \\sqrt{3}',
  inputs: { current: 'A', length: 'm', area: 'm²', temperature: '°C', circuit: 'case' },
  unit: 'V',
  source: { ref: 'UFC 3-520-01, Interior Electrical Systems', at: 'B-2, with power factor 1' },
  valid: { area: [0.05e-6, 16e-6], temperature: [0, 100] },
  compute: ({ current, length, area, temperature, circuit }) =>
    CONDUCTORS[circuit] * current * wireResistance.compute({ area, length, temperature }),
};

export const wireFormulas = [
  wireDiameter,
  wireArea,
  wireResistance,
  conductorTemperatureFactor,
  voltageDrop,
] as const;
