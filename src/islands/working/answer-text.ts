import type { FigureAnswer, Values, WorkingFigure, Written } from '../../calc/working-figures/figure.ts';
import { plain, significant } from '../shared/format.ts';
import { threeFigures } from '../shared/quantity.ts';

const withUnit = (figure: string, { unit, one = unit }: Written): string =>
  `${figure} ${figure === '1' ? one : unit}`.trim();

/** "5,500 rpm", "1 week": an SI value in the unit that a reader knows. */
export const writtenText = (value: number, written: Written): string =>
  withUnit(threeFigures(value * written.per), written);

/** "1,024 lines": what was put in, no digit lost. */
export const inputText = (value: number, written: Written): string =>
  withUnit(plain(significant(value * written.per, 8), 4), written);

/** The sentence with its figures put in; a name that neither a row nor an input has stays as it is. */
export function sentenceOf({ inputs }: WorkingFigure, values: Values, { say, rows }: FigureAnswer): string {
  const texts = new Map(inputs.map(({ id, written }) => [id, inputText(values[id]!, written)]));
  for (const { id, value, written } of rows) texts.set(id, writtenText(value, written));
  return say.replace(/\{(\w+)\}/g, (whole, id: string) => texts.get(id) ?? whole);
}
