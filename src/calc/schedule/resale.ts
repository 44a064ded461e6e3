import type { Band } from '../core/band.ts';
import { scaleBand } from '../core/band.ts';
import { parts } from '../trade.ts';

/** What brings nothing once it is bought: used up, cut to size, or a service. Memory of the trade. */
const usedUp: ReadonlySet<string> = new Set([
  ...['bracket-stock', 'welding-plate', 'brackets-to-drawing', 'motor-plate-to-drawing', 'trial-stock'],
  ...['machine-transport', 'lifting-hire', 'machine-hire', 'gib-strips', 'spindle-bearings'],
  ...['fasteners', 'shims-and-compounds', 'oils-and-grease', 'practice-stock', 'handful-of-small-things'],
  ...['backup-media', 'alignment-epoxy', 'second-round-lot', 'apron-plate', 'nut-bracket-stock-carriage'],
  ...['screw-end-machining', 'screw-end-inserts', 'rear-bracket-stock', 'clamp-bracket-stock'],
  ...['oversize-ball-set', 'adjustable-nut-cross', 'bearings-carriage', 'bearings-cross'],
  ...['thrust-washers-lead-screw', 'thrust-washers-cross', 'desktop-program-licence'],
  ...['hook-up-wire', 'glands-and-trunking', 'small-box-lot', 'terminals-and-ferrules', 'labels-and-sleeves'],
  ...['loose-wire', 'ferrites', 'wipers', 'mains-cord', 'dedicated-circuit', 'encoder-bracket'],
  ...[
    'flag-and-bracket',
    'slotted-disc-set',
    'collet-back-plate',
    'pair-cable',
    'sensor-cable',
    'power-cable',
  ],
]);

/** Share of the shop price that comes back: from the shelf, and once it has been built in. Judgement, no source. */
const FROM_SHELF: Band = [0.5, 0.7, 0.85];
const BUILT_IN: Band = [0.25, 0.45, 0.65];
const NOTHING_BACK: Band = [0, 0, 0];

const isCredit: ReadonlySet<string> = new Set(parts.filter((part) => part.credit).map((part) => part.id));

/** Every id that is named here, for the test that they exist. */
export const usedUpParts: readonly string[] = [...usedUp];

/** What selling a part again brings, as a share of its shop price. */
export function resaleShare(part: string, builtIn: boolean): Band {
  if (usedUp.has(part) || isCredit.has(part)) return NOTHING_BACK;
  return builtIn ? BUILT_IN : FROM_SHELF;
}

/** What a line of the bill brings when it is sold again, dollars. */
export const resaleOf = (part: string, [, likely]: Band, builtIn: boolean): Band =>
  scaleBand(resaleShare(part, builtIn), likely);
