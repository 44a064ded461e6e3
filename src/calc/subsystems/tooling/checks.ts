import { atLeastLimit, type CheckRule } from '../../core/check.ts';
import { derive } from '../../core/formula.ts';
import { assumed } from '../../core/quantity.ts';
import { differenceOf } from '../../core/steps.ts';
import { gangTravel } from '../../formulas/reach.ts';

const practice = 'common practice, no source';

const gang: CheckRule = (look) => {
  if (!look.chosen('tool-holding', 'gang-tools')) return undefined;
  return atLeastLimit({
    id: 'gang-travel',
    label: 'Cross travel for three tools in line',
    value: differenceOf(
      look.fact('cross-travel'),
      assumed(0.025, 'm', 'a nut and its block take 25 mm of the travel; common practice'),
    ),
    limit: derive(gangTravel, {
      tools: assumed(3, '1', 'three tools in line do most small parts'),
      toolPitch: assumed(0.035, 'm', practice),
      partRadius: assumed(0.01, 'm', practice),
      clearance: assumed(0.005, 'm', practice),
      pastCentre: assumed(0.0015, 'm', practice),
    }),
    remedy:
      'Two tools in line, smaller bar, or a post that changes tools by hand. A longer nut takes 25 mm of travel.',
    decisions: ['tool-holding', 'cross-nut', 'compound'],
  });
};

export const checks: readonly CheckRule[] = [gang];
