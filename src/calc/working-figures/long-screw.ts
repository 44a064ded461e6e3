import type { EndFixity } from '../formulas/screw-limits.ts';
import { type Curve, curveOf, type FigureInput, mm } from './figure.ts';

/** What a screw of this root diameter and length, m, stands with its far end held so, SI. */
type Stands = (rootDiameter: number, length: number, endFixity: EndFixity) => number;

/** Lengths that are looked at, mm. */
const LENGTH = { low: 150, high: 1500 };

/** The length that counts: a label, a first value in mm, and the figure of the design. */
export const lengthInput = (says: Pick<FigureInput, 'label' | 'example' | 'own'>): FigureInput => ({
  id: 'length',
  unit: 'm',
  written: mm,
  ...LENGTH,
  step: 10,
  ...says,
});

export const rootInput: FigureInput = {
  id: 'root',
  label: 'Root diameter of the screw',
  unit: 'm',
  written: mm,
  low: 5,
  high: 40,
  step: 0.1,
  example: 13.2,
  own: 'carriage-screw-root',
};

/** What it stands against its length, with the far end supported and with it free. */
export function endCurves(stands: Stands, root: number): readonly Curve[] {
  const along = (endFixity: EndFixity) =>
    curveOf(LENGTH.low / 1000, LENGTH.high / 1000, (length) => stands(root, length, endFixity));
  return [
    { name: 'far end supported', points: along('fixed-supported') },
    { name: 'far end free', points: along('fixed-free'), broken: true },
  ];
}
