import type { Formula } from '../core/formula.ts';

/** Edges a second that a quadrature encoder sends: four for each line of the disc. */
export const encoderEdgeRate: Formula<{ lines: number; speed: number }> = {
  id: 'encoder-edge-rate',
  label: 'Encoder edges a second',
  equation: 'edges = 4 × lines × speed',
  tex: 'f = 4\\,N\\,n',
  inputs: { lines: '1', speed: 'rev/s' },
  unit: 'Hz',
  source: {
    ref: 'Automation Talk, encoder frequency worked example, 2011-02',
    at: 'channel frequency = speed × lines; four edges a line',
  },
  valid: { lines: [1, 100000], speed: [0, 200] },
  compute: ({ lines, speed }) => 4 * lines * speed,
};
