import type { Figure, Look } from '../../core/figure.ts';
import { chosen, type Quantity, type Unit } from '../../core/quantity.ts';
import { memory, type Slide, slideFigure } from './axis.ts';

/** A screw that is sold, from memory of the trade. SI; `dynamicRating` in N, `nutStiffness` in N/m. */
export interface Screw {
  readonly lead: number;
  readonly outside: number;
  readonly root: number;
  readonly nut: number;
  readonly nutStiffness: number;
  /** Diameter on which the balls run, and the load of a million turns; a sliding screw has neither. */
  readonly balls?: { readonly circle: number; readonly dynamicRating: number };
}

/** The screw that an answer brings, with the question and the option. */
export interface BoughtScrew {
  readonly screw: Screw;
  readonly decision: string;
  readonly option: string;
}

/** One size of it as a figure; undefined where no screw is bought or the size does not exist. */
export const sizeOf = (
  bought: BoughtScrew | undefined,
  unit: Unit,
  pick: (screw: Screw) => number | undefined,
): Quantity | undefined => {
  const value = bought && pick(bought.screw);
  return value === undefined ? undefined : chosen(value, unit, bought!.decision, bought!.option, memory);
};

/** Sizes that come with the screw and nothing else decides. */
export const ballFigures = (
  slide: Slide,
  bought: (look: Look) => BoughtScrew | undefined,
): readonly Figure[] => [
  slideFigure(slide, 'ball-circle', 'Circle on which the balls run', (look) =>
    sizeOf(bought(look), 'm', ({ balls }) => balls?.circle),
  ),
  slideFigure(slide, 'dynamic-rating', 'Load rating of the nut (dynamic)', (look) =>
    sizeOf(bought(look), 'N', ({ balls }) => balls?.dynamicRating),
  ),
];
