import { encoderEdgeRate } from '../../src/calc/formulas/spindle.ts';
import { type PublishedRow, row } from './row.ts';

export const spindleRows: readonly PublishedRow[] = [
  row(encoderEdgeRate, {
    what: '360 lines at 2,000 turns a minute; the source prints the channel, a quarter of the edges',
    source: { ref: 'Automation Talk, encoder frequency worked example, 2011-02', at: 'worked example' },
    provenance: 'seen',
    inputs: { lines: 360, speed: 2000 / 60 },
    as: (edges) => edges / 4 / 1000,
    printed: '12',
    unit: 'kHz',
  }),
  ...[[1000, '4000'] as const, [1500, '6000'] as const].map(([lines, printed]) =>
    row(encoderEdgeRate, {
      what: `${lines} lines at one turn a second: counts a turn with every edge counted`,
      source: { ref: 'THK catalogue 513-1E', at: 'p. B15-70, encoder pulses times 4' },
      provenance: 'seen',
      inputs: { lines, speed: 1 },
      printed,
      unit: 'counts a turn',
    }),
  ),
  row(encoderEdgeRate, {
    what: '250 pulses a turn at the printed 1.44 turns a minute: the pulses counted in 10 s',
    source: { ref: 'CUI, encoder tutorial', at: 'slide 6' },
    provenance: 'seen',
    inputs: { lines: 250, speed: 1.44 / 60 },
    as: (edges) => (edges / 4) * 10,
    printed: '60',
    unit: 'pulses',
  }),
];
