import { all, any, asked, is, known, not } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';
import { smallLathe } from '../carriage/screw.ts';
import { leadScrewSynchroniser, trainingMachine } from '../purpose/paths.ts';
import { crossDriven, crossWork, newCrossScrew, relievesSaddle } from './screw.ts';

const measured = known('tunnel-height');

const base = { subsystem: 'cross-slide', kind: 'mechanics' } as const;

export const risks: readonly Risk[] = [
  {
    ...base,
    id: 'tunnel-too-tight',
    name: 'The nut does not fit under the cross slide',
    cause: 'The tunnel was not measured until the slide was off.',
    effect: 'The saddle must be milled, or a smaller screw ordered.',
    sign: 'No tunnel height on the sketch.',
    prevent: 'Measure it now. Push a wooden or printed dummy nut through before ordering.',
    chance: [0.15, 0.3, 0.5],
    money: [20, 80, 250],
    hours: [3, 10, 30],
    stage: 'cross-stage',
    when: newCrossScrew,
    levers: [
      { when: is('cross-screw', 'ball-screw-16'), by: 1.6, why: 'a 16 mm nut' },
      { when: is('cross-screw', 'ball-screw-8', 'sliding-cross-screw'), by: 0.5, why: 'a small nut' },
      { when: not(measured), by: 1.6, why: 'nobody has measured the tunnel' },
      { when: all(smallLathe, not(measured)), by: 1.6, why: 'small lathes have the lowest tunnels' },
      { when: measured, by: 0.5, why: 'you measured the tunnel' },
    ],
  },
  {
    ...base,
    id: 'saddle-weakened',
    name: 'The saddle cracks at the relief',
    cause: 'The web was thinner than it looked.',
    effect: 'A casting lost for good.',
    sign: 'Less than 5 mm left; the casting rings differently.',
    prevent: 'Drill a small hole first to find the thickness. Leave ribs. Mill, do not grind deep.',
    chance: [0.01, 0.04, 0.1],
    money: [60, 250, 700],
    hours: [10, 25, 60],
    stage: 'cross-stage',
    when: relievesSaddle,
    levers: [{ when: is('cross-screw', 'ball-screw-16'), by: 1.6, why: 'a deep slot' }],
  },
  {
    ...base,
    id: 'travel-lost',
    name: 'Too little travel left',
    cause: 'Longer nut, blocks, covers and motor all take some.',
    effect: 'The tool does not reach the centre, or the largest diameter cannot be faced.',
    sign: 'Nobody has checked the reach on paper.',
    prevent:
      'Draw both ends: 1.5 mm past centre with the shortest tool, clear of the largest diameter with the longest.',
    chance: [0.2, 0.35, 0.55],
    money: [0, 40, 200],
    hours: [1, 6, 20],
    stage: 'cross-stage',
    when: crossWork,
    levers: [
      { when: is('cross-nut', 'cross-double-nut'), by: 1.6, why: 'a long double nut' },
      {
        when: is('tool-holding', 'gang-tools', 'quick-change-and-rear-post'),
        by: 1.6,
        why: 'tools that need a long reach',
      },
      { when: is('cross-screw', 'original-cross-screw'), by: 0.5, why: 'the screw and nut stay as they are' },
    ],
  },
  {
    ...base,
    id: 'play-larger-than-planned',
    name: 'More play than planned',
    cause: 'Nut, bearing, coupling and bracket each give a little.',
    effect: 'Steps on curves, and twice the error on diameter at each reversal.',
    sign: 'Play differs between the middle and the ends of travel.',
    prevent:
      'Look in this order: end play of the screw, loose screws in hubs, bracket flex, nut. Only then set compensation in the control.',
    chance: [0.25, 0.4, 0.6],
    money: [20, 90, 300],
    hours: [2, 8, 24],
    stage: 'commission',
    when: any(asked('carriage-drive'), crossWork),
    levers: [
      {
        when: all(is('carriage-drive', 'original-lead-screw', 'rack-pinion'), not(leadScrewSynchroniser)),
        by: 1.6,
        why: 'play in the half-nut or rack',
      },
      {
        when: leadScrewSynchroniser,
        by: 0.3,
        why: 'the play of the half-nut is known, and threads and feeds run one way',
      },
      { when: is('cross-screw', 'original-cross-screw'), by: 1.6, why: 'the original cross screw' },
      { when: is('cross-nut', 'cross-double-nut'), by: 0.6, why: 'a cross nut without play' },
      {
        when: is('cross-screw-hold', 'made-cross-block'),
        by: 0.6,
        why: 'a block with a matched bearing pair',
      },
      {
        when: is('carriage-nut', 'rolled-preloaded-nut', 'ground-preloaded-nut'),
        by: 0.7,
        why: 'a carriage nut without play',
      },
    ],
  },
  {
    ...base,
    id: 'machine-too-flexible',
    kind: 'other',
    name: 'The lathe is too springy for the cuts you have in mind',
    cause: 'A light bed, a small slide, the compound still on.',
    effect: 'Chatter and slow parts; no motor cures it.',
    sign: 'The tool moves more than 0.05 mm for a 150 N push.',
    prevent: 'Take the compound off, a stiff stand, sharp positive inserts, lighter cuts.',
    chance: [0.3, 0.5, 0.7],
    money: [0, 120, 500],
    hours: [1, 6, 20],
    stage: 'prove',
    when: crossDriven,
    levers: [
      { when: smallLathe, by: 1.6, why: 'a small lathe bends early' },
      { when: is('compound', 'keep-compound'), by: 1.4, why: 'the compound stays' },
      { when: is('compound', 'slotted-slide-plate'), by: 0.7, why: 'a solid slotted slide' },
      { when: is('stand', 'stiff-stand'), by: 0.7, why: 'a stiff stand' },
      { when: trainingMachine, by: 0.5, why: 'training machines have stiffer slides' },
    ],
  },
];
