import type { Judgement, Reading, ReadingShow } from '../../calc/core/reading.ts';
import { sizeOfUnit, spokenUnit, unitOf } from '../lathe/units.ts';
import { counted, lengthFigure, plain, significant, type Units } from './format.ts';

/** What is measured, as it is typed, shown and judged in words. Values come and go in SI, temperatures in °C. */

const OWN = {
  seconds: { unit: 's', spoken: 'seconds' },
  temperature: { unit: '°C', spoken: 'degrees Celsius' },
} as const;

const isOwn = (show: ReadingShow): show is keyof typeof OWN => Object.hasOwn(OWN, show);

/** The unit that a reading is typed and shown in; empty for a plain count. Only lengths change to inches. */
export const readingUnit = (show: ReadingShow, units: Units): string =>
  isOwn(show) ? OWN[show].unit : unitOf(show, units);

/** That unit in full, for a reader who hears it. */
export const spokenReadingUnit = (show: ReadingShow, units: Units): string =>
  isOwn(show) ? OWN[show].spoken : spokenUnit(show, units);

/** That unit in SI: 0.001 for millimetres, 0.01 for percent. What is typed times this is what is kept. */
export const readingUnitSize = (show: ReadingShow, units: Units): number =>
  isOwn(show) ? 1 : sizeOfUnit(show, units);

/** A value without its unit: 0.000008 m gives "0.008", 0.02 of a whole gives "2". */
export function readingFigure(value: number, show: ReadingShow, units: Units): string {
  if (show === 'length') return lengthFigure(value, units);
  return plain(significant(value / readingUnitSize(show, units), 4), 3);
}

/** A value with its unit: "0.008 mm", "2 %", "12". */
export const readingText = (value: number, show: ReadingShow, units: Units): string =>
  `${readingFigure(value, show, units)} ${readingUnit(show, units)}`.trim();

type Limits = Pick<Reading, 'show' | 'atMost' | 'atLeast' | 'good'>;

/** What a value is held against: "limit 0.005 mm, good to 0.002 mm"; empty where it is only noted. */
export function readingLimit({ show, atMost, atLeast, good }: Limits, units: Units): string {
  const said = (value: number): string => readingText(value, show, units);
  const limit =
    atMost !== undefined && atLeast !== undefined
      ? `${readingFigure(atLeast, show, units)} to ${said(atMost)}`
      : atMost !== undefined
        ? `limit ${said(atMost)}`
        : atLeast !== undefined
          ? `at least ${said(atLeast)}`
          : '';
  return [limit, good === undefined ? '' : `good to ${said(good)}`].filter(Boolean).join(', ');
}

const JUDGED: Readonly<Record<Judgement, string>> = {
  good: 'good',
  within: 'within the limit',
  outside: 'outside the limit',
  noted: 'noted',
};

/** How a value stands, in words. */
export const judgementText = (judgement: Judgement): string => JUDGED[judgement];

/** "3 values"; empty for a single one. */
export const placesText = ({ places = 1 }: Pick<Reading, 'places'>): string =>
  places === 1 ? '' : counted(places, 'value');
