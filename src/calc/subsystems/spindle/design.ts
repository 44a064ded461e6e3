import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { encoderEdgeRate } from '../../formulas/spindle.ts';

const linesOf: Readonly<Record<string, number>> = {
  'one-mark-a-turn': 1,
  'slotted-disc': 100,
  'encoder-100-200': 100,
  'encoder-1000-up': 1024,
  'ring-encoder': 1024,
};

function sensorLines(look: Look): Quantity | undefined {
  const sensor = look.option('spindle-sensor') ?? '';
  const lines = linesOf[sensor];
  return lines === undefined
    ? undefined
    : chosen(lines, '1', 'spindle-sensor', sensor, 'the fewest lines that are sold under that name');
}

export const figures: readonly Figure[] = [
  { id: 'sensor-lines', label: 'Lines of the spindle sensor', of: sensorLines },
  {
    id: 'encoder-edges',
    label: 'Edges a second from the spindle sensor at top speed',
    of: (look) =>
      derive(encoderEdgeRate, { lines: look.figure('sensor-lines'), speed: look.fact('spindle-speed-max') }),
  },
];
