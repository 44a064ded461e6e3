import { atLeastLimit, atMost, type CheckRule } from '../../core/check.ts';
import { assumed } from '../../core/quantity.ts';
import { productOf } from '../../core/steps.ts';
import { throughBar } from './design.ts';

const gang: CheckRule = (look) => {
  const needed = look.figure('gang-travel-needed');
  if (needed === undefined) return undefined;
  return atLeastLimit({
    id: 'gang-travel',
    label: 'Cross travel for the tools in line',
    value: look.figure('cross-travel-left'),
    limit: needed,
    remedy:
      'Fewer tools in line, smaller bar, or a post that changes tools by hand. A longer nut takes 25 mm of travel.',
    decisions: ['tool-holding', 'cross-nut', 'compound'],
  });
};

const reach: CheckRule = (look) =>
  look.option('tool-holding') === undefined
    ? undefined
    : atLeastLimit({
        id: 'cross-reach',
        label: 'Cross travel from past the centre to clear of the work',
        value: look.figure('cross-travel-left'),
        limit: look.figure('cross-reach-needed'),
        remedy:
          'A shorter nut, a tool that stands further out, or smaller work. Check it with the shortest tool at the centre and with the longest one clear of the largest diameter.',
        decisions: ['cross-screw', 'cross-nut', 'compound', 'tool-holding'],
      });

const centre: CheckRule = (look) =>
  look.option('tool-holding') === undefined
    ? undefined
    : atLeastLimit({
        id: 'reach-past-centre',
        label: 'Shortest tool past the centre',
        value: look.measured('reach-past-centre'),
        limit: assumed(0.0015, 'm', 'a facing tool goes 1.5 mm past the centre; common practice'),
        remedy: 'Move post or plate towards the centre, or let that tool stand out further.',
        decisions: ['compound', 'tool-holding', 'cross-screw'],
        needs: look.measured('reach-past-centre') ? [] : ['reach-past-centre'],
        testWhen:
          'With the post on the slide, before its holes are drilled; again at both ends of the travel.',
      });

const height: CheckRule = (look) =>
  look.option('tool-holding') === undefined
    ? undefined
    : atMost({
        id: 'tool-height',
        label: 'Tool off centre height, seen on the smallest diameter',
        value: look.figure('tool-height-error'),
        limit: productOf('m', {
          tolerance: look.fact('tolerance-on-diameter'),
          share: assumed(0.2, '1', 'a fifth of the tolerance; judgement'),
        }),
        comfort: 1.2,
        remedy:
          'Set every tip to the centre with a gauge, and touch off near the diameter that matters. A tip above the centre also rubs.',
        decisions: ['tool-holding', 'tool-offsets'],
        testWhen: 'Face a bar to the middle with every tool: no pip may stay.',
      });

const bar: CheckRule = (look) => {
  if (!throughBar(look)) return undefined;
  return atMost({
    id: 'bar-overhang',
    harm: true,
    label: 'Bar behind the headstock without a tube',
    value: look.figure('bar-overhang'),
    limit: assumed(3, '1', 'three diameters at most; common practice'),
    remedy:
      'Run the bar in a fixed tube with a bush, or saw it shorter, and put a barrier behind the machine. A bar that bends while it turns has killed.',
    decisions: ['bar-feed', 'work-holding'],
    needs: look.measured('bar-overhang') ? [] : ['bar-overhang'],
    testWhen: 'Before every new length of bar: look behind the machine, then start slowly.',
  });
};

export const reachChecks: readonly CheckRule[] = [gang, reach, centre, height, bar];
