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
];
