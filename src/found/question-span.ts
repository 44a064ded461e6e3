import { effectsOfQuestion } from '../calc/choosing.ts';
import type { Decision } from '../calc/core/decision.ts';
import { currentEdition } from '../content/edition.ts';
import { fullConversion } from '../content/example-owner.ts';
import { counted, moneyRange } from '../islands/shared/format.ts';
import type { PictureFigure } from './picture.ts';

/** How far the answers of a question lie apart in money on the example’s path, or how many there are where none costs more. */
export function spanOf({ id, options }: Decision): PictureFigure[] {
  const effects = effectsOfQuestion(fullConversion, currentEdition, id);
  const [low, high] = effects?.moneyScale ?? [0, 0];
  const count = { label: 'To choose from', value: counted(options.length, 'answer') };
  if (Math.round(high - low) < 10) return [count];
  return [count, { label: 'Against the usual answer', value: moneyRange(low, high) }];
}
