import { beltCentreDistance, beltLeastCentres, beltLength, beltTeethInMesh } from '../formulas/belt.ts';
import { mm, type Values, type WorkingFigure } from './figure.ts';

const teeth = { unit: 'teeth', per: 1 } as const;
/** How far round the nearest belt the picture looks, and how far a belt is looked for, teeth. */
const ROUND = 15;
const FARTHEST = 200;

function answer({ motor = 1, screw = 1, pitch = 1, wanted = 1 }: Values) {
  const pulleys = { teethSmall: Math.min(motor, screw), teethLarge: Math.max(motor, screw), pitch };
  const centresOf = (beltTeeth: number) => beltCentreDistance.compute({ ...pulleys, beltTeeth });
  const touching = beltLeastCentres.compute(pulleys);
  const aimed = Math.max(wanted, touching);
  const near = Math.round(beltLength.compute({ ...pulleys, centreDistance: aimed }) / pitch);
  const nearest =
    Array.from({ length: FARTHEST }, (_, more) => near + more).find((each) =>
      Number.isFinite(centresOf(each)),
    ) ?? near;
  const centres = centresOf(nearest);
  const around = Array.from({ length: 2 * ROUND + 1 }, (_, at) => nearest - ROUND + at);
  const points = around
    .map((each) => [each, centresOf(each)] as const)
    .filter(([, distance]) => Number.isFinite(distance));
  return {
    say:
      wanted < touching
        ? 'The pulleys do not fit at {wanted}: the shortest belt that does has {belt}, at {centres}. Take smaller pulleys or move them apart.'
        : 'A belt of {belt} is nearest: the shafts then stand {centres} apart, with {mesh} in mesh on the smaller pulley.',
    rows: [
      { id: 'belt', label: 'Nearest belt', value: nearest, written: teeth },
      { id: 'centres', label: 'Distance that it gives', value: centres, written: mm },
      { id: 'touching', label: 'Least distance of the two', value: touching, written: mm },
      {
        id: 'mesh',
        label: 'In mesh on the smaller pulley',
        value: beltTeethInMesh.compute({ ...pulleys, centreDistance: centres }),
        written: teeth,
      },
    ],
    curves: [{ name: 'distance that a belt gives', points }],
    mark: [nearest, centres],
  } as const;
}

const pulley = { unit: '1', written: teeth, low: 10, high: 120, step: 1 } as const;

/** The whole belt nearest to a wanted distance, and the distance that it gives. */
export const belt: WorkingFigure = {
  id: 'belt',
  topic: 'belt-or-direct',
  question: 'Which belt, and how far apart do the shafts stand?',
  begin: 'Set the pulleys and the distance you would like. Belts come in whole teeth; ask which are sold.',
  inputs: [
    {
      id: 'motor',
      label: 'Teeth of the motor pulley',
      ...pulley,
      example: 20,
      own: 'carriage-motor-pulley-teeth',
    },
    {
      id: 'screw',
      label: 'Teeth of the screw pulley',
      ...pulley,
      example: 40,
      own: 'carriage-screw-pulley-teeth',
    },
    {
      id: 'pitch',
      label: 'Pitch of the belt',
      unit: 'm',
      written: mm,
      metricOnly: true,
      low: 2,
      high: 8,
      step: 0.5,
      example: 5,
      own: 'carriage-belt-pitch',
    },
    {
      id: 'wanted',
      label: 'Distance that you would like',
      unit: 'm',
      written: mm,
      low: 20,
      high: 400,
      step: 1,
      example: 100,
      own: 'carriage-belt-centres',
    },
  ],
  across: { label: 'teeth of the belt', written: teeth },
  up: { label: 'distance of the shafts, mm', written: mm },
  formulas: [beltCentreDistance.id, beltLength.id, beltLeastCentres.id, beltTeethInMesh.id],
  answer,
};
