import type { Formula } from '../core/formula.ts';
import { roundArea, steel } from './constants.ts';
import type { EndFixity } from './screw-limits.ts';

/** Stretch stiffness of the shaft, N/m, at the softest place of the nut. Held fast at both ends it is four times as stiff. */
export const screwStiffness: Formula<{ rootDiameter: number; length: number; endFixity: EndFixity }> = {
  id: 'screw-stiffness',
  label: 'Stiffness of the screw shaft',
  equation: 'stiffness = k × E × π ÷ 4 × rootDiameter² ÷ length, k = 4 for fixed ends, else 1',
  tex: 'c = \\frac{k\\,E\\,\\pi\\,d_r^2}{4\\,L}',
  inputs: { rootDiameter: 'm', length: 'm', endFixity: 'case' },
  unit: 'N/m',
  source: {
    ref: 'University of Utah, ME EN 7960 Precision Machine Design, ball-screw lecture',
    at: 'slide 26',
  },
  valid: {},
  unverified: 'The lecture prints the equation; no worked stiffness is known to us.',
  compute: ({ rootDiameter, length, endFixity }) =>
    ((endFixity === 'fixed' ? 4 : 1) * steel.modulus * roundArea(rootDiameter)) / length,
};

/** Growth of a steel screw, m, from its length and the rise of its temperature: 11.7 µm a metre a kelvin. */
export const screwThermalGrowth: Formula<{ length: number; rise: number }> = {
  id: 'screw-thermal-growth',
  label: 'Growth of the screw when it warms',
  equation: 'growth = 11.7 × 10⁻⁶ × length × rise',
  tex: '\\Delta L = \\alpha\\,L\\,\\Delta T',
  inputs: { length: 'm', rise: 'K' },
  unit: 'm',
  source: { ref: 'Kammerer lexicon', at: 'thermal expansion; steel is taken as 11.5 to 12 × 10⁻⁶ a kelvin' },
  valid: { rise: [0, 60] },
  compute: ({ length, rise }) => 11.7e-6 * length * rise,
};

/** What the threaded part must hold, m. `runOff` stands at both ends; `covers` is the squeezed length of both. */
type Thread = { travel: number; nut: number; runOff: number; covers: number };

/** Length of thread to order, m. */
export const screwThreadLength: Formula<Thread> = {
  id: 'screw-thread-length',
  label: 'Threaded length of the screw',
  equation: 'thread = travel + nut + 2 × runOff + covers',
  tex: 'L_t = s + l_n + 2 l_o + l_c',
  inputs: { travel: 'm', nut: 'm', runOff: 'm', covers: 'm' },
  unit: 'm',
  source: { ref: 'common practice, no source', at: 'sum of what lies on the screw' },
  valid: {},
  unverified: 'A plain sum of lengths; nothing is published to hold it against.',
  compute: ({ travel, nut, runOff, covers }) => travel + nut + 2 * runOff + covers,
};

/** Length of the whole screw, m: thread, both turned ends (journals) and the stub for pulley or coupling. */
export const screwLengthBudget: Formula<
  Thread & { fixedJournal: number; driveStub: number; floatingJournal: number }
> = {
  id: 'screw-length-budget',
  label: 'Whole length of the screw',
  equation: 'length = travel + nut + 2 × runOff + covers + fixedJournal + driveStub + floatingJournal',
  tex: 'L = s + l_n + 2 l_o + l_c + l_f + l_d + l_s',
  inputs: {
    ...screwThreadLength.inputs,
    fixedJournal: 'm',
    driveStub: 'm',
    floatingJournal: 'm',
  },
  unit: 'm',
  source: { ref: 'common practice, no source', at: 'stub 20 to 30 mm for a pulley or coupling' },
  valid: {},
  unverified: 'A plain sum of lengths; nothing is published to hold it against.',
  compute: ({ fixedJournal, driveStub, floatingJournal, ...thread }) =>
    screwThreadLength.compute(thread) + fixedJournal + driveStub + floatingJournal,
};

export const screwShapeFormulas = [
  screwStiffness,
  screwThermalGrowth,
  screwThreadLength,
  screwLengthBudget,
] as const;
