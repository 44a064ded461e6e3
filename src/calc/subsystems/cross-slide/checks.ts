import { atLeastLimit, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';

/** Room that a nut needs: the largest of body, flange across its flats and housing, and 2 mm. From memory. */
const nutHeight: Readonly<Record<string, number>> = {
  'ball-screw-8': 0.024,
  'ball-screw-12': 0.032,
  'ball-screw-16': 0.042,
  'sliding-cross-screw': 0.024,
};

const tunnel: CheckRule = (look) => {
  const need = nutHeight[look.option('cross-screw') ?? ''];
  if (need === undefined) return undefined;
  return atLeastLimit({
    id: 'cross-tunnel',
    label: 'Room for the nut under the cross slide',
    value: look.measured('tunnel-height'),
    limit: assumed(need, 'm', 'from memory of the trade: measure the nut that you buy'),
    remedy:
      'Take a smaller screw, keep the original one, or relieve the saddle: metal that cannot be put back.',
    needs: ['tunnel-height'],
    decisions: ['cross-screw', 'hand-use'],
  });
};

export const checks: readonly CheckRule[] = [tunnel];
