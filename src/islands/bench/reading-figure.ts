import type { ReadingShow } from '../../calc/core/reading.ts';
import type { Show } from '../../calc/facts.ts';
import { parseFigure, type Reading as Typed } from '../lathe/parse.ts';
import { figureOf, unitOf } from '../lathe/units.ts';
import { plain, significant, type Units } from '../shared/format.ts';

/** Kinds that only readings have, with their unit; the model keeps them as they are typed. */
const PLAIN: Readonly<Partial<Record<ReadingShow, string>>> = { seconds: 's', temperature: '°C' };

/** The unit a reading is typed in; empty for a count. */
export const readingUnit = (show: ReadingShow, units: Units): string =>
  PLAIN[show] ?? unitOf(show as Show, units);

/** An SI reading as its field has it, without the unit. Small lengths keep their last hundredth. */
export const readingFigure = (value: number, show: ReadingShow, units: Units): string =>
  PLAIN[show] === undefined ? figureOf(value, show as Show, units) : plain(significant(value, 4), 3);

/** "0.005 mm". */
export const saidReading = (value: number, show: ReadingShow, units: Units): string =>
  `${readingFigure(value, show, units)} ${readingUnit(show, units)}`.trim();

/** Reads what was typed as an SI value; a minus sign is kept, since a reading may lie on either side. */
export function parseReading(typed: string, show: ReadingShow, units: Units): Typed {
  const minus = /^\s*[-−]/.test(typed);
  const bare = typed.replace(/^\s*[-−]\s*/, '');
  const kind: Show = PLAIN[show] === undefined ? (show as Show) : 'count';
  const read = parseFigure(bare.replace(/\s*(°C|s)$/, ''), kind, units);
  return read.kind === 'value' && minus ? { kind: 'value', value: -read.value } : read;
}
