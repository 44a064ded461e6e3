import type { Figure } from '../../core/figure.ts';
import { cabinetFigures } from './design-cabinet.ts';
import { cableFigures } from './design-cable.ts';
import { endFigures } from './design-ends.ts';
import { leakageFigures } from './design-leakage.ts';
import { supplyFigures } from './design-supply.ts';

export const figures: readonly Figure[] = [
  ...supplyFigures,
  ...leakageFigures,
  ...cableFigures,
  ...cabinetFigures,
  ...endFigures,
];
