import type { Fact, Show } from '../../calc/facts.ts';
import { lengthFigure, plain, type Units } from '../shared/format.ts';

/** Only lengths and pitches follow the reader's choice of millimetres or inches. */
const FIXED: Readonly<Record<Exclude<Show, 'length' | 'pitch'>, string>> = {
  mass: 'kg',
  power: 'W',
  speed: 'rpm',
  current: 'A',
  frequency: 'Hz',
  hours: 'h',
  share: '%',
  count: '',
};

/** The unit a figure is typed and shown in; empty for a plain count. */
export function unitOf(show: Show, units: Units): string {
  if (show === 'length' || show === 'pitch') return units === 'inch' ? 'in' : 'mm';
  return FIXED[show];
}

const SPOKEN: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  in: 'inches',
  kg: 'kilograms',
  W: 'watts',
  rpm: 'turns a minute',
  A: 'amps',
  Hz: 'hertz',
  h: 'hours a week',
  '%': 'percent',
};

/** The unit in full, for a reader who hears it. */
export const spokenUnit = (show: Show, units: Units): string => SPOKEN[unitOf(show, units)] ?? 'how many';

/** An SI figure in the unit of its field, without the unit: 0.25 m → "250"; 2000/60 per second → "2,000". */
export function figureOf(value: number, show: Show, units: Units): string {
  if (show === 'length' || show === 'pitch') return lengthFigure(value, units);
  if (show === 'speed') return plain(value * 60, 1);
  return show === 'share' ? plain(value * 100, 1) : plain(value, 2);
}

/** "250 mm", "2,000 rpm", "3". */
export const saidFigure = (value: number, show: Show, units: Units): string =>
  `${figureOf(value, show, units)} ${unitOf(show, units)}`.trim();

/** The range that makes sense for a fact: "80–600 mm". */
export const sensibleRange = ({ sense, show }: Fact, units: Units): string =>
  `${figureOf(sense[0], show, units)}–${saidFigure(sense[1], show, units)}`;
