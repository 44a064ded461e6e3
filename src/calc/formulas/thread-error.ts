import type { Formula } from '../core/formula.ts';

/**
 * How much too long a thread comes out, m, when the carriage keeps the speed of the last index mark while the
 * spindle sags: the lead grows by 1/(1 − sag). Length is what is cut until the next correction: the whole thread
 * where nothing corrects, one pitch where every index mark does. Sag as a share, 0.05 for 5 %.
 */
export const threadLeadError: Formula<{ length: number; sag: number }> = {
  id: 'thread-lead-error',
  label: 'Lead error with one mark a turn',
  equation: 'error = length × (1 ÷ (1 − sag) − 1)',
  tex: 'e = L\\left(\\frac{1}{1 - s} - 1\\right)',
  inputs: { length: 'm', sag: '1' },
  unit: 'm',
  source: { ref: 'plain arithmetic', at: 'carriage at the old speed, spindle at the new' },
  valid: { sag: [0, 0.5] },
  unverified: 'Arithmetic of two speeds; no published worked figure is known.',
  compute: ({ length, sag }) => length * (1 / (1 - sag) - 1),
};

/**
 * Largest lead error, m, when the carriage follows the spindle's position: one count of the encoder, four to a
 * line, whatever the spindle speed does. The lag of the axis itself comes on top. Pitch in m.
 */
export const threadLeadErrorTracked: Formula<{ pitch: number; lines: number }> = {
  id: 'thread-lead-error-tracked',
  label: 'Lead error when the carriage follows the encoder',
  equation: 'error = pitch ÷ (4 × lines)',
  tex: 'e = \\frac{P}{4 N}',
  inputs: { pitch: 'm', lines: '1' },
  unit: 'm',
  source: { ref: 'plain arithmetic', at: 'one count of the encoder' },
  valid: {},
  unverified: 'Arithmetic of one encoder count; no published worked figure is known.',
  compute: ({ pitch, lines }) => pitch / (4 * lines),
};

export const threadErrorFormulas = [threadLeadError, threadLeadErrorTracked] as const;
