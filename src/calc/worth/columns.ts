import type { State } from '../choices/state.ts';
import { type Alternative, CONVERSION } from '../core/alternative.ts';
import { reasonFirst } from './alternatives.ts';
import type { WorthVerdict } from './verdict.ts';

/**
 * In which order the columns stand: what the verdict points at first, then what speaks for itself on this path, in the
 * order of the list, then the rest. The conversion stands second where it is a sound case, behind everything that
 * fits where it wants thinking over, and last where we would not.
 */
export function columnOrder(
  state: State,
  { answer, weight }: WorthVerdict,
  list: readonly Alternative[],
): string[] {
  const fits = list.filter((each) => reasonFirst(each, state) !== undefined).map(({ id }) => id);
  const ahead = answer === CONVERSION ? fits : [answer, ...fits.filter((id) => id !== answer)];
  const rest = list.map(({ id }) => id).filter((id) => !ahead.includes(id));
  if (weight === 'do-not') return [...ahead, ...rest, CONVERSION];
  const place = weight === 'go' ? Math.min(1, ahead.length) : ahead.length;
  return [...ahead.slice(0, place), CONVERSION, ...ahead.slice(place), ...rest];
}
