import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Unit } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { beltCentreDistance, beltTeethInMesh } from '../../formulas/belt.ts';
import { figuresFor, type Slide, usual } from './axis.ts';

/** Teeth of both pulleys and of a belt that is sold, 5 mm pitch. */
export interface Belt {
  readonly motor: number;
  readonly screw: number;
  readonly belt: number;
  /** The question and the answer that it follows from. */
  readonly decision: string;
  readonly option: string;
}

const fromStock = 'tooth counts and a belt length that are sold; the seller’s list decides';

/** Pulleys, belt and how far apart the shafts stand. `belt` is undefined where there is none. */
export function beltFigures(slide: Slide, belt: (look: Look) => Belt | undefined): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const sold = (look: Look, unit: Unit, pick: (belt: Belt) => number) => {
    const found = belt(look);
    return found && chosen(pick(found), unit, found.decision, found.option, fromStock);
  };
  const pulleys = (look: Look) => ({
    teethSmall: of(look)('motor-pulley-teeth'),
    teethLarge: of(look)('screw-pulley-teeth'),
    pitch: of(look)('belt-pitch'),
  });
  return [
    figure('motor-pulley-teeth', 'Teeth of the pulley on the motor', (look) =>
      sold(look, '1', ({ motor }) => motor),
    ),
    figure('screw-pulley-teeth', 'Teeth of the pulley on the screw', (look) =>
      sold(look, '1', ({ screw }) => screw),
    ),
    figure('belt-teeth', 'Teeth of the belt', (look) => sold(look, '1', (found) => found.belt)),
    figure('belt-pitch', 'Pitch of the belt', (look) => sold(look, 'm', () => 0.005)),
    figure('belt-length', 'Length of the belt', (look) =>
      productOf('m', { teeth: of(look)('belt-teeth'), pitch: of(look)('belt-pitch') }),
    ),
    figure('belt-centres', 'Distance between the shafts', (look) =>
      derive(beltCentreDistance, { ...pulleys(look), beltTeeth: of(look)('belt-teeth') }),
    ),
    figure('belt-mesh', 'Teeth in mesh on the small pulley', (look) =>
      derive(beltTeethInMesh, { ...pulleys(look), centreDistance: of(look)('belt-centres') }),
    ),
    figure('belt-adjustment', 'Slot for tightening the belt, each way', (look) =>
      productOf('m', {
        centres: of(look)('belt-centres'),
        share: usual(0.03, '1', 'three hundredths of the distance, each way; common practice'),
      }),
    ),
  ];
}
