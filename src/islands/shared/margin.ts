import type { Check } from '../../calc/core/check.ts';
import { plain, significant } from './format.ts';

const times = (margin: number): string => plain(significant(margin, 2), 2);

/** Of a figure that needs so much: "1.6 times what is needed". */
function enough(margin: number): string {
  if (margin >= 100) return 'far more than needed';
  if (times(margin) === '1') return 'just what is needed';
  return margin < 1 ? `${times(margin)} of what is needed` : `${times(margin)} times what is needed`;
}

/** Of a figure that may reach so much: "62 % of what is allowed", "1.3 times what is allowed". */
function within(margin: number): string {
  const used = 1 / margin;
  if (margin >= 100) return 'far less than allowed';
  if (times(used) === '1') return 'just what is allowed';
  return used > 1 ? `${times(used)} times what is allowed` : `${times(100 * used)} % of what is allowed`;
}

/** How much room a check leaves, in words; empty where a figure is missing. */
export function marginText({ margin, sense }: Check): string {
  if (margin === undefined) return '';
  if (sense === 'between') return margin < 1 ? 'outside the two limits' : 'between the two limits';
  return sense === 'at-most' ? within(margin) : enough(margin);
}
