import {
  screwLifeHours,
  screwLifeRevolutions,
  screwMeanForce,
  screwMeanSpeed,
} from '../../src/calc/formulas/screw-life.ts';
import { screwThermalGrowth } from '../../src/calc/formulas/screw-shape.ts';
import { type PublishedRow, row } from './row.ts';

const thk = {
  ref: 'THK general catalogue, ball screws',
  at: 'worked example, high-speed transfer equipment (horizontal)',
} as const;
const load = { dynamicRating: 5400, meanForce: 225, loadFactor: 1.5 };

const misumi = { ref: 'MISUMI mechanical components catalogue 2025, ball screws', at: 'p. 1678' } as const;
const speeds = [1500 / 60, 3000 / 60, 1500 / 60];
const shares = [0.294, 0.412, 0.294];

export const screwLifeRows: readonly PublishedRow[] = [
  row(screwLifeRevolutions, {
    what: '5,400 N rating, 225 N mean, factor 1.5',
    source: thk,
    provenance: 'memory',
    inputs: load,
    printed: '4.1e9',
    unit: 'rev',
  }),
  row(screwLifeRevolutions, {
    what: 'the same life as a way, with 40 mm for each turn',
    source: thk,
    provenance: 'memory',
    inputs: load,
    as: (life) => (life * 0.04) / 1000,
    printed: '1.64e5',
    unit: 'km',
  }),
  row(screwLifeHours, {
    what: 'the same life at 400 turns a minute',
    source: thk,
    provenance: 'memory',
    inputs: { ...load, speed: 400 / 60 },
    printed: '1.71e5',
    unit: 'h',
  }),
  row(screwMeanForce, {
    what: '343 N, 10 N and 324 N in three phases; the phases were quoted from memory',
    source: misumi,
    provenance: 'memory',
    inputs: { forces: [343, 10, 324], speeds, shares },
    printed: '250',
    unit: 'N',
    looser: { by: 0.005, because: 'the source rounds its mean up to a whole ten' },
  }),
  row(screwMeanSpeed, {
    what: '1,500, 3,000 and 1,500 turns a minute in three phases; the phases were quoted from memory',
    source: misumi,
    provenance: 'memory',
    inputs: { speeds, shares },
    as: (speed) => speed * 60,
    printed: '2118',
    unit: 'turns a minute',
  }),
  row(screwThermalGrowth, {
    what: '1 m warmed by 1 K',
    source: { ref: 'THK general catalogue, ball screws', at: 'section A15, thermal displacement' },
    provenance: 'memory',
    inputs: { length: 1, rise: 1 },
    as: (growth) => growth * 1e6,
    printed: '12',
    unit: 'µm',
  }),
];
