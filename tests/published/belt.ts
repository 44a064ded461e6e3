import {
  beltCentreDistance,
  beltLeastCentres,
  beltLength,
  beltMeshFactor,
  beltTeethInMesh,
} from '../../src/calc/formulas/belt.ts';
import { type PublishedRow, row } from './row.ts';

const inch = 0.0254;

/** Pulleys of 18 and 6 inches, taken as 18 and 6 teeth of π inches, so that the pitch diameters are the source's. */
const pulleys = { teethSmall: 6, teethLarge: 18, pitch: Math.PI * inch };
const apart = { ...pulleys, centreDistance: 96 * inch };

const solutions = {
  ref: "Shigley's Mechanical Engineering Design, instructor's solutions",
  at: 'chapter 17, open belt on pulleys of 18 and 6 inches',
} as const;
const tsubaki = { ref: 'Tsubaki, timing belt technical data', at: 'engagement correction factor' } as const;

const meshRow = (teethInMesh: number, printed: string): PublishedRow =>
  row(beltMeshFactor, {
    what: `${teethInMesh} teeth in mesh`,
    source: tsubaki,
    provenance: 'seen',
    inputs: { teethInMesh },
    printed,
    unit: '1',
  });

/** Two equal pulleys touch at one pitch diameter. */
const touchingRow = (teeth: number, printed: string): PublishedRow =>
  row(beltLeastCentres, {
    what: `two pulleys of ${teeth} teeth, 5 mm pitch: their pitch diameter`,
    source: { ref: 'Makers’ tables of toothed pulleys', at: 'pitch 5 mm' },
    provenance: 'memory',
    inputs: { teethSmall: teeth, teethLarge: teeth, pitch: 0.005 },
    as: (distance) => distance * 1000,
    printed,
    unit: 'mm',
  });

export const beltRows: readonly PublishedRow[] = [
  row(beltLength, {
    what: '18 and 6 inches, 96 inches apart',
    source: solutions,
    provenance: 'seen',
    inputs: apart,
    as: (length) => length / inch,
    printed: '230.074',
    unit: 'in',
  }),
  row(beltCentreDistance, {
    what: '18 and 6 inches under 230.074 inches of belt',
    source: solutions,
    provenance: 'seen',
    inputs: { ...pulleys, beltTeeth: 230.074 / Math.PI },
    as: (centres) => centres / inch,
    printed: '96',
    unit: 'in',
  }),
  row(beltTeethInMesh, {
    what: 'wrap of the smaller pulley, of which the teeth in mesh are the share',
    source: solutions,
    provenance: 'seen',
    inputs: apart,
    as: (teeth) => (teeth / pulleys.teethSmall) * 2 * Math.PI,
    printed: '3.016511',
    unit: 'rad',
  }),
  row(beltTeethInMesh, {
    what: 'wrap of the larger pulley, what is left of a whole turn twice',
    source: solutions,
    provenance: 'seen',
    inputs: apart,
    as: (teeth) => 2 * Math.PI - (teeth / pulleys.teethSmall) * 2 * Math.PI,
    printed: '3.266674',
    unit: 'rad',
  }),
  meshRow(6, '1.0'),
  meshRow(5, '0.7'),
  meshRow(4, '0.5'),
  touchingRow(20, '31.83'),
  touchingRow(40, '63.66'),
];
