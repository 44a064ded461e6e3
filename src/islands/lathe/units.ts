import type { Fact, Show } from '../../calc/facts.ts';
import { lengthFigure, plain, significant, type Units } from '../shared/format.ts';

/** How a figure is written: its unit, that unit in SI, and the unit in full for a reader who hears it. */
interface Written {
  readonly unit: string;
  readonly size: number;
  readonly spoken: string;
}

/** Kinds that look the same whatever lengths are written in. Speed of a slide and feed follow the lengths. */
const FIXED: Readonly<Record<Exclude<Show, Lengthy>, Written>> = {
  mass: { unit: 'kg', size: 1, spoken: 'kilograms' },
  power: { unit: 'W', size: 1, spoken: 'watts' },
  speed: { unit: 'rpm', size: 1 / 60, spoken: 'turns a minute' },
  current: { unit: 'A', size: 1, spoken: 'amps' },
  frequency: { unit: 'Hz', size: 1, spoken: 'hertz' },
  hours: { unit: 'h', size: 1, spoken: 'hours a week' },
  share: { unit: '%', size: 0.01, spoken: 'percent' },
  count: { unit: '', size: 1, spoken: 'how many' },
  force: { unit: 'N', size: 1, spoken: 'newtons' },
  torque: { unit: 'N·m', size: 1, spoken: 'newton metres' },
  'small-current': { unit: 'mA', size: 0.001, spoken: 'milliamps' },
  voltage: { unit: 'V', size: 1, spoken: 'volts' },
  inductance: { unit: 'mH', size: 0.001, spoken: 'millihenries' },
  rate: { unit: 'kHz', size: 1000, spoken: 'kilohertz' },
  resistance: { unit: 'Ω', size: 1, spoken: 'ohms' },
  ratio: { unit: '', size: 1, spoken: 'to one' },
};

type Lengthy = 'length' | 'pitch' | 'feed' | 'slide-speed' | 'surface-speed' | 'acceleration';

const MM = 0.001;
const INCH = 0.0254;
const LENGTHY: Readonly<Record<Lengthy, Readonly<Record<Units, Written>>>> = {
  length: {
    metric: { unit: 'mm', size: MM, spoken: 'millimetres' },
    inch: { unit: 'in', size: INCH, spoken: 'inches' },
  },
  pitch: {
    metric: { unit: 'mm', size: MM, spoken: 'millimetres' },
    inch: { unit: 'in', size: INCH, spoken: 'inches' },
  },
  feed: {
    metric: { unit: 'mm/rev', size: MM, spoken: 'millimetres a turn' },
    inch: { unit: 'in/rev', size: INCH, spoken: 'inches a turn' },
  },
  'slide-speed': {
    metric: { unit: 'mm/min', size: MM / 60, spoken: 'millimetres a minute' },
    inch: { unit: 'in/min', size: INCH / 60, spoken: 'inches a minute' },
  },
  'surface-speed': {
    metric: { unit: 'm/min', size: 1 / 60, spoken: 'metres a minute' },
    inch: { unit: 'ft/min', size: 0.3048 / 60, spoken: 'feet a minute' },
  },
  acceleration: {
    metric: { unit: 'mm/s²', size: MM, spoken: 'millimetres a second squared' },
    inch: { unit: 'in/s²', size: INCH, spoken: 'inches a second squared' },
  },
};

const isLengthy = (show: Show): show is Lengthy => Object.hasOwn(LENGTHY, show);

const written = (show: Show, units: Units): Written => (isLengthy(show) ? LENGTHY[show][units] : FIXED[show]);

/** The unit a figure is typed and shown in; empty for a plain count. */
export const unitOf = (show: Show, units: Units): string => written(show, units).unit;

/** That unit in SI: 0.001 for millimetres. */
export const sizeOfUnit = (show: Show, units: Units): number => written(show, units).size;

/** The unit in full, for a reader who hears it. */
export const spokenUnit = (show: Show, units: Units): string => written(show, units).spoken;

/** Kinds whose figures may be far below one: they keep four figures instead of two decimals. */
const FINE: readonly Show[] = [
  'feed',
  'slide-speed',
  'acceleration',
  'torque',
  'small-current',
  'inductance',
  'rate',
];

/** An SI figure in the unit of its field, without the unit: 0.25 m → "250"; 2000/60 per second → "2,000". */
export function figureOf(value: number, show: Show, units: Units): string {
  if (show === 'length' || show === 'pitch') return lengthFigure(value, units);
  const figure = value / sizeOfUnit(show, units);
  if (FINE.includes(show)) return plain(significant(figure, 5), figure < 1 ? 5 : 3);
  return plain(figure, show === 'speed' || show === 'share' ? 1 : 2);
}

/** "250 mm", "2,000 rpm", "3". */
export const saidFigure = (value: number, show: Show, units: Units): string =>
  `${figureOf(value, show, units)} ${unitOf(show, units)}`.trim();

/** The range that makes sense for a fact: "80–600 mm". */
export const sensibleRange = ({ sense, show }: Fact, units: Units): string =>
  `${figureOf(sense[0], show, units)}–${saidFigure(sense[1], show, units)}`;
