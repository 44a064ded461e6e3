import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity } from '../../core/quantity.ts';
import { encoderEdgeRate } from '../../formulas/spindle.ts';
import { cutFigures } from './design-cut.ts';
import { driveFigures } from './design-drive.ts';
import { stopFigures } from './design-stop.ts';
import { threadFigures } from './design-thread.ts';

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
  if (lines === undefined) return undefined;
  const fewest = chosen(
    lines,
    '1',
    'spindle-sensor',
    sensor,
    'the fewest lines that are sold under that name',
  );
  return lines === 1 ? fewest : (look.measured('encoder-lines') ?? fewest);
}

export const figures: readonly Figure[] = [
  { id: 'sensor-lines', label: 'Lines of the spindle sensor', of: sensorLines },
  {
    id: 'encoder-edges',
    label: 'Edges a second from the spindle sensor at top speed',
    of: (look) =>
      derive(encoderEdgeRate, { lines: look.figure('sensor-lines'), speed: look.fact('spindle-speed-max') }),
  },
  ...driveFigures,
  ...cutFigures,
  ...stopFigures,
  ...threadFigures,
];
