import {
  cuttingForce,
  cuttingPower,
  spindleSpeedFor,
  surfaceSpeed,
} from '../../src/calc/formulas/cutting.ts';
import { type PublishedRow, row } from './row.ts';

const mitsubishi = 'Mitsubishi Materials, technical information, formulas for turning';
const square = Math.PI / 2;
const metreAMinute = (speed: number) => speed * 60;
const turnsAMinute = (speed: number) => speed * 60;

const speedRows = [
  row(surfaceSpeed, {
    what: '50 mm at 700 turns a minute',
    source: { ref: mitsubishi, at: 'cutting speed, worked example' },
    provenance: 'seen',
    inputs: { diameter: 0.05, speed: 700 / 60 },
    as: metreAMinute,
    printed: '110',
    unit: 'm/min',
  }),
  row(surfaceSpeed, {
    what: '150 mm at 250 turns a minute',
    source: { ref: 'Tungaloy catalogue 2020-21', at: 'p. L030, worked example' },
    provenance: 'seen',
    inputs: { diameter: 0.15, speed: 250 / 60 },
    as: metreAMinute,
    printed: '117',
    unit: 'm/min',
    looser: { by: 0.01, because: 'the source drops the decimals: 117.8 is printed as 117' },
  }),
  row(surfaceSpeed, {
    what: '12 mm drill at 1,350 turns a minute',
    source: {
      ref: 'Mitsubishi Materials, technical information, formulas for drilling',
      at: 'worked example',
    },
    provenance: 'seen',
    inputs: { diameter: 0.012, speed: 1350 / 60 },
    as: metreAMinute,
    printed: '50.9',
    unit: 'm/min',
  }),
  row(spindleSpeedFor, {
    what: '200 m/min at 22 mm',
    source: { ref: 'ISCAR rotating-tool catalogue 2017', at: 'p. 601, worked example' },
    provenance: 'seen',
    inputs: { surfaceSpeed: 200 / 60, diameter: 0.022 },
    as: turnsAMinute,
    printed: '2894',
    unit: 'turns a minute',
  }),
];

/** The maker gives the specific force at this feed itself, so the exponent is nil. */
const mildSteel = { kc11: 3100e6, mc: 0, depth: 0.003, feed: 0.0002, enteringAngle: square };

const forceRows = [
  row(cuttingForce, {
    what: 'chip 3 mm deep at 0.40 mm a turn: its area, as the force at 1 N/mm²',
    source: { ref: 'Röhm Norm RN 1391', at: 'table 1' },
    provenance: 'seen',
    inputs: { kc11: 1e6, mc: 0, depth: 0.003, feed: 0.0004, enteringAngle: square },
    printed: '1.2',
    unit: 'mm²',
  }),
  row(cuttingForce, {
    what: 'mild steel 3 mm deep at 0.2 mm a turn; the source prints the power at 120 m/min through 80 %',
    source: { ref: mitsubishi, at: 'cutting power, worked example' },
    provenance: 'seen',
    inputs: mildSteel,
    as: (newton) => (newton * 2) / 0.8 / 1000,
    printed: '4.65',
    unit: 'kW',
  }),
  row(cuttingPower, {
    what: 'mild steel 3 mm deep at 0.2 mm a turn, 120 m/min through 80 %',
    source: { ref: mitsubishi, at: 'cutting power, worked example' },
    provenance: 'seen',
    inputs: { cuttingForce: cuttingForce.compute(mildSteel), surfaceSpeed: 120 / 60, efficiency: 0.8 },
    as: (watt) => watt / 1000,
    printed: '4.65',
    unit: 'kW',
  }),
  row(cuttingPower, {
    what: 'the constant of the metric power equation: kilogram-force times metre a minute in one kilowatt',
    source: { ref: 'Kyocera catalogue 2016-17', at: 'p. R32, power equation' },
    provenance: 'seen',
    inputs: { cuttingForce: 9.80665, surfaceSpeed: 1 / 60, efficiency: 1 },
    as: (watt) => 1000 / watt,
    printed: '6.12e3',
    unit: 'kgf·m/min in 1 kW',
  }),
];

export const cuttingRows: readonly PublishedRow[] = [...speedRows, ...forceRows];
