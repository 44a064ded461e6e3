import { encoderEdgeRate } from '../formulas/spindle.ts';
import { curveOf, rpm, type Values, type WorkingFigure } from './figure.ts';

const SPEED = { low: 100, high: 6000 };
const thousands = { unit: 'kHz', per: 1 / 1000 } as const;

function answer({ lines = 0, speed = 0, most = 0 }: Values) {
  const edgesAt = (each: number) => encoderEdgeRate.compute({ lines, speed: each });
  const edges = edgesAt(speed);
  const half = most / 2;
  return {
    say:
      edges <= half
        ? 'The control sees {edges}, under half of the {most} that it can count.'
        : edges <= most
          ? 'The control sees {edges}: more than half of the {most} that it can count. Take a disc with fewer lines.'
          : 'The control sees {edges} and can count {most}: it loses some, and the thread is wrong.',
    rows: [
      { id: 'edges', label: 'Counts', value: edges, written: thousands },
      { id: 'half', label: 'Half of what it can count', value: half, written: thousands },
    ],
    curves: [
      { name: 'counts', points: curveOf(SPEED.low / 60, SPEED.high / 60, edgesAt, 1) },
      {
        name: 'half of what the control can count',
        points: curveOf(SPEED.low / 60, SPEED.high / 60, () => half, 1),
        broken: true,
      },
    ],
    mark: [speed, edges],
  } as const;
}

/** How many counts a spindle sensor sends, and what the control can take. */
export const edges: WorkingFigure = {
  id: 'edges',
  topic: 'spindle-feedback',
  question: 'Can the control count the spindle?',
  begin: 'Set the sensor, and what the manual of the control says that it can count.',
  inputs: [
    {
      id: 'lines',
      label: 'Lines of the sensor',
      unit: '1',
      written: { unit: 'lines', per: 1 },
      low: 1,
      high: 5000,
      step: 1,
      example: 1024,
      own: 'sensor-lines',
    },
    {
      id: 'speed',
      label: 'Fastest spindle speed',
      unit: 'rev/s',
      written: rpm,
      ...SPEED,
      step: 10,
      example: 2500,
      own: 'spindle-speed-max',
    },
    {
      id: 'most',
      label: 'Counts that the control can take',
      unit: 'Hz',
      written: thousands,
      low: 1,
      high: 10_000,
      step: 1,
      example: 1000,
    },
  ],
  across: { label: 'spindle speed, rpm', written: rpm },
  up: { label: 'counts, thousand a second (kHz)', written: thousands },
  formulas: [encoderEdgeRate.id],
  answer,
};
