import { voltageDrop } from '../formulas/wire.ts';
import { ampere, curveOf, percent, type Values, volt, type WorkingFigure } from './figure.ts';

const LENGTH = { low: 0.5, high: 30 };
const metre = { unit: 'm', per: 1 } as const;
/** °C of the copper, a little warmer than the workshop. */
const WARM = 25;
/** Share of the volts that may be lost. Common practice. */
const MOST = 0.05;

function answer({ current = 0, length = 0, area = 1, volts = 1 }: Values) {
  const dropAt = (each: number) =>
    voltageDrop.compute({ current, length: each, area, temperature: WARM, circuit: 'dc' });
  const drop = dropAt(length);
  const most = MOST * volts;
  return {
    say:
      drop <= most
        ? 'Of {volts}, {drop} are lost on the way there and back: {share}, within the twentieth that is usual.'
        : 'Of {volts}, {drop} are lost on the way there and back: {share}, more than a twentieth. Take thicker wire or a shorter way.',
    rows: [
      { id: 'drop', label: 'Lost in the cable', value: drop, written: volt },
      { id: 'share', label: 'Of all', value: drop / volts, written: percent },
      { id: 'left', label: 'Left at the far end', value: Math.max(0, volts - drop), written: volt },
    ],
    curves: [
      { name: 'lost, there and back', points: curveOf(0, LENGTH.high, dropAt, 1) },
      { name: 'a twentieth of the volts', points: curveOf(0, LENGTH.high, () => most, 1), broken: true },
    ],
    mark: [length, drop],
  } as const;
}

/** Volts that a cable of two wires loses, against its length. */
export const cable: WorkingFigure = {
  id: 'cable',
  topic: 'cable-and-noise',
  question: 'How many volts does a cable lose?',
  begin:
    'Set the way and the wire, copper at 25 °C; for an encoder put in its own 5 V and current. How much a wire may carry is another question.',
  inputs: [
    {
      id: 'current',
      label: 'Current',
      unit: 'A',
      written: ampere,
      low: 0.05,
      high: 20,
      step: 0.05,
      example: 4.2,
      own: 'axis-cable-current',
    },
    {
      id: 'length',
      label: 'Length of the cable, one way',
      unit: 'm',
      written: metre,
      ...LENGTH,
      step: 0.5,
      example: 5,
      own: 'cable-run',
    },
    {
      id: 'area',
      label: 'Copper of one wire',
      unit: 'm²',
      written: { unit: 'mm²', per: 1e6 },
      low: 0.14,
      high: 16,
      step: 0.01,
      example: 1.5,
      own: 'axis-cable-area',
    },
    {
      id: 'volts',
      label: 'Volts at its beginning',
      unit: 'V',
      written: volt,
      low: 5,
      high: 100,
      step: 1,
      example: 40,
      own: 'carriage-supply-volts',
    },
  ],
  across: { label: 'length of the cable one way, m', written: metre },
  up: { label: 'volts lost', written: volt },
  formulas: [voltageDrop.id],
  answer,
};
