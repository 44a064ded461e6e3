import type { ReadingShow } from '../../calc/core/reading.ts';
import { parseFigure, type Reading as Typed } from '../lathe/parse.ts';
import type { Units } from '../shared/format.ts';

/** Reads what was typed as a reading in SI; a minus sign is kept, since a reading may lie on either side. */
export function parseReading(typed: string, show: ReadingShow, units: Units): Typed {
  const minus = /^\s*[-−]/.test(typed);
  const bare = typed.replace(/^\s*[-−]\s*/, '').replace(/\s*(°C|s)$/, '');
  const read = parseFigure(bare, show === 'seconds' || show === 'temperature' ? 'count' : show, units);
  return read.kind === 'value' && minus ? { kind: 'value', value: -read.value } : read;
}
