import { atLeastLimit, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { fitChecks } from '../motors/checks-fit.ts';
import { motionChecks, pushCheck } from '../motors/checks-push.ts';
import { screwChecks } from '../motors/checks-screw.ts';
import { diameterChecks } from './checks-diameter.ts';

/** Room that a nut needs: the largest of body, flange across its flats and housing, and 2 mm. From memory. */
const nutRoom: Readonly<Record<string, { height: number; width: number }>> = {
  'ball-screw-8': { height: 0.024, width: 0.031 },
  'ball-screw-12': { height: 0.032, width: 0.042 },
  'ball-screw-16': { height: 0.042, width: 0.05 },
  'sliding-cross-screw': { height: 0.024, width: 0.03 },
};

const sides = {
  height: { id: 'cross-tunnel', fact: 'tunnel-height', label: 'Room for the nut under the cross slide' },
  width: { id: 'cross-tunnel-width', fact: 'tunnel-width', label: 'Room for the nut between the ways' },
} as const;

const tunnel =
  (side: keyof typeof sides): CheckRule =>
  (look) => {
    const need = nutRoom[look.option('cross-screw') ?? ''];
    if (need === undefined) return undefined;
    const { id, fact, label } = sides[side];
    const value = look.measured(fact);
    return atLeastLimit({
      id,
      label,
      value,
      limit: assumed(need[side], 'm', 'from memory of the trade: measure the nut that you buy'),
      remedy:
        'Take a smaller screw, keep the original one, or relieve the saddle: metal that cannot be put back. Leave at least 5 mm of web.',
      ...(!value && { needs: [fact] }),
      decisions: ['cross-screw', 'hand-use'],
    });
  };

const lighter = 'Lighter cuts, a finer lead, or the larger motor.';

const jobs: readonly CheckRule[] = [
  pushCheck('cross', {
    id: 'cross-turning',
    need: 'push-turning',
    label: 'Push of the cross slide to stand still while turning',
    remedy: lighter,
  }),
  pushCheck('cross', {
    id: 'cross-facing',
    need: 'push-facing',
    label: 'Push of the cross slide for facing',
    remedy: lighter,
  }),
  pushCheck('cross', {
    id: 'cross-parting',
    need: 'push-parting',
    label: 'Push of the cross slide for parting off',
    remedy: 'A narrower blade, kept sharp; or a finer lead or the larger motor.',
  }),
];

/** What the cross slide must be able to do and stand, and whether its nut goes in. */
export const checks: readonly CheckRule[] = [
  tunnel('height'),
  tunnel('width'),
  ...jobs,
  ...motionChecks('cross'),
  ...screwChecks('cross'),
  ...fitChecks('cross'),
  ...diameterChecks,
];
