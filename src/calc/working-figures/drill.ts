import type { DrillMaterial } from '../formulas/drill-materials.ts';
import { drillThrust } from '../formulas/drilling.ts';
import { curveOf, mm, newton, type Values, type WorkingFigure } from './figure.ts';

const DIAMETER = { low: 1, high: 25 };

function answer({ diameter = 0, feed = 0, push = 0 }: Values) {
  const thrust = (each: number, material: DrillMaterial) =>
    drillThrust.compute({ diameter: each, feed, material, point: 'sharp' });
  const [steel, aluminium] = [thrust(diameter, 'mild-steel'), thrust(diameter, 'aluminium')];
  const along = (of: (each: number) => number, steps: number) =>
    curveOf(DIAMETER.low / 1000, DIAMETER.high / 1000, of, steps);
  return {
    say:
      steel <= push
        ? 'In mild steel it asks for {steel}, in aluminium {aluminium}: the carriage can push {push}.'
        : aluminium <= push
          ? 'In aluminium it asks for {aluminium}, and the carriage can push {push}; in mild steel {steel} is too much.'
          : 'It asks for {aluminium} in aluminium and {steel} in mild steel: more than the {push} that the carriage can push. Drill in steps, or feed less.',
    rows: [
      { id: 'steel', label: 'In mild steel', value: steel, written: newton },
      { id: 'aluminium', label: 'In aluminium', value: aluminium, written: newton },
    ],
    curves: [
      { name: 'mild steel, sharp drill', points: along((each) => thrust(each, 'mild-steel'), 1) },
      { name: 'what the carriage can push', points: along(() => push, 1), broken: true },
    ],
    mark: [diameter, steel],
  } as const;
}

/** What a drill asks of the carriage, against what it can push. */
export const drill: WorkingFigure = {
  id: 'drill',
  topic: 'drilling',
  question: 'Which drill can the carriage push?',
  begin: 'Set a drill and its feed. A blunt drill asks for half as much again.',
  inputs: [
    {
      id: 'diameter',
      label: 'Diameter of the drill',
      unit: 'm',
      written: mm,
      ...DIAMETER,
      step: 0.1,
      example: 10,
    },
    {
      id: 'feed',
      label: 'Feed',
      unit: 'm/rev',
      written: { unit: 'mm/rev', per: 1000 },
      low: 0.02,
      high: 0.4,
      step: 0.01,
      example: 0.12,
    },
    {
      id: 'push',
      label: 'Push that the carriage has',
      unit: 'N',
      written: newton,
      low: 100,
      high: 15_000,
      step: 50,
      example: 2500,
      own: 'carriage-thrust',
    },
  ],
  across: { label: 'diameter of the drill, mm', written: mm },
  up: { label: 'push, N', written: newton },
  formulas: [drillThrust.id],
  answer,
};
