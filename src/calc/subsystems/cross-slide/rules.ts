import { all, below, is, known, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { smallLathe } from '../carriage/screw.ts';
import { leadScrewAlone } from '../purpose/paths.ts';
import {
  ballOnCross,
  fullyReversible,
  hopelessForSixteen,
  relievesSaddle,
  tooLowForEight,
  tooLowForTwelve,
} from './screw.ts';

const base = { subsystem: 'cross-slide' } as const;

const fit: readonly Rule[] = [
  {
    ...base,
    id: 'training-machine-has-its-mechanics',
    when: is('which-lathe', 'dead-training-machine'),
    then: [
      {
        kind: 'asksNot',
        decisions: [
          'carriage-drive',
          'carriage-nut',
          'carriage-screw-ends',
          'carriage-screw-machining',
          'carriage-coupling',
          'apron',
          'cross-screw',
          'cross-nut',
          'cross-motor-place',
          'cross-screw-hold',
          'compound',
        ],
      },
    ],
    say: 'A training machine has its screws, slides and motor mounts already.',
  },
  {
    ...base,
    id: 'carriage-only-leaves-the-cross-slide',
    when: is('driven-axes', 'carriage-only'),
    then: [
      { kind: 'asksNot', decisions: ['cross-screw', 'cross-nut', 'cross-motor-place', 'cross-screw-hold'] },
    ],
    say: 'Only the carriage gets a motor, so the cross slide stays as it is.',
  },
  {
    ...base,
    id: 'lead-screw-motor-leaves-the-compound',
    when: leadScrewAlone,
    then: [{ kind: 'asksNot', decisions: ['compound'] }],
    say: 'Only the old lead screw gets a motor, so the compound stays and feeds the tool by hand as before.',
  },
  {
    ...base,
    id: 'reversible-rules-out-deep-slot',
    when: fullyReversible,
    then: [{ kind: 'rulesOut', decision: 'cross-screw', options: ['ball-screw-16'] }],
    say: 'You want nothing cut that cannot be put back; a 16 mm screw asks for a slot in the saddle.',
  },
  {
    ...base,
    id: 'reversible-needs-tunnel-for-12',
    when: all(fullyReversible, tooLowForTwelve),
    then: [{ kind: 'rulesOut', decision: 'cross-screw', options: ['ball-screw-12'] }],
    say: 'In the tunnel you measured a 12 mm nut would need the saddle milled, and you want nothing cut.',
  },
  {
    ...base,
    id: 'sixteen-does-not-fit',
    when: hopelessForSixteen,
    then: [{ kind: 'rulesOut', decision: 'cross-screw', options: ['ball-screw-16'] }],
    say: 'In the tunnel you measured a 16 mm nut does not fit even after the deepest relief that is safe.',
  },
  {
    ...base,
    id: 'sixteen-on-a-small-lathe',
    when: all(is('cross-screw', 'ball-screw-16'), smallLathe, not(known('tunnel-height'))),
    then: [
      { kind: 'suggests', decision: 'cross-screw', options: ['ball-screw-8', 'ball-screw-12'] },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'Under the slide of a lathe this small a 16 mm nut seldom finds room: measure the tunnel before you order anything.',
  },
  {
    ...base,
    id: 'saddle-must-be-relieved',
    when: all(relievesSaddle, not(fullyReversible)),
    then: [
      { kind: 'addsTask', task: 'relieve-saddle' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'The nut needs more height than the tunnel has (or nobody has measured it): the plan holds a cut in the saddle that cannot be undone.',
  },
  {
    ...base,
    id: 'reversible-with-unmeasured-tunnel',
    when: all(fullyReversible, is('cross-screw', 'ball-screw-12'), not(known('tunnel-height'))),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Nobody has measured the tunnel. If it is under 32 mm a 12 mm nut does not fit without a cut, and you want nothing cut: measure before you order.',
  },
  {
    ...base,
    id: 'small-nut-does-not-fit',
    when: all(is('cross-screw', 'ball-screw-8', 'sliding-cross-screw'), tooLowForEight),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'In the tunnel you measured even the small nut is tight: measure the nut of the seller before you order.',
  },
  {
    ...base,
    id: 'small-screw-on-heavy-slide',
    when: all(is('cross-screw', 'ball-screw-8'), not(below('swing', 0.2801))),
    then: [
      { kind: 'addsCheck', check: 'cross-buckling' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A small screw on a heavy slide does for light finishing only.',
  },
];

const behaviour: readonly Rule[] = [
  {
    ...base,
    id: 'curves-and-original-cross-screw',
    when: all(is('purpose', 'profiles'), is('cross-screw', 'original-cross-screw')),
    then: [
      { kind: 'suggests', decision: 'cross-screw', options: ['ball-screw-12', 'ball-screw-8'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'For curves the play of the original cross screw shows as a step, twice its size on the diameter.',
  },
  {
    ...base,
    id: 'curves-need-a-nut-without-play',
    when: all(is('purpose', 'profiles'), is('cross-nut', 'cross-single-nut')),
    then: [
      { kind: 'warns', level: 'look' },
      { kind: 'suggests', decision: 'cross-nut', options: ['cross-double-nut', 'cross-oversize-balls'] },
    ],
    say: 'Curves want under 0.02 mm of play in the cross slide: larger balls or a double nut, and an end block without play.',
  },
  {
    ...base,
    id: 'cross-ball-screw-creeps',
    when: all(is('hand-use', 'hand-cranks'), ballOnCross),
    then: [
      { kind: 'suggests', decision: 'power-off-hold', options: ['holding-brake'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A ball screw on the cross slide turns by itself under cut when the drives are off: keep them on, fit a brake, or lock the gib.',
  },
  {
    ...base,
    id: 'rear-motor-and-crank',
    when: all(is('hand-use', 'hand-cranks'), is('cross-motor-place', 'rear-belt')),
    then: [
      { kind: 'assumes', name: 'cross-hand-wheel', value: 'front-of-screw' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'With the motor behind, the handwheel goes on the front end of the screw, so one crank kit fewer is bought.',
  },
  {
    ...base,
    id: 'sliding-cross-screw-wastes-torque',
    when: is('cross-screw', 'original-cross-screw', 'sliding-cross-screw'),
    then: [
      { kind: 'assumes', name: 'cross-screw-efficiency', value: 'from 0.2 to 0.45' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'A sliding screw turns less than half of the motor torque into push.',
  },
  {
    ...base,
    id: 'cross-seats-bored-first',
    when: is('cross-screw-hold', 'made-cross-block'),
    then: [
      {
        kind: 'gate',
        gate: 'bored-seats',
        of: ['bore-bearing-seats', 'cross-brackets'],
        before: ['strip-cross-slide'],
      },
    ],
    say: 'The bearing seats of the cross block are bored before the cross slide comes apart.',
  },
  {
    ...base,
    id: 'rear-motor-longer-screw',
    when: is('cross-motor-place', 'rear-belt'),
    then: [
      { kind: 'assumes', name: 'cross-screw-extra', value: '60 to 100 mm' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'The cross screw must be 60 to 100 mm longer to reach the motor behind.',
  },
  {
    ...base,
    id: 'original-screw-in-its-bracket',
    when: is('cross-screw', 'original-cross-screw'),
    then: [{ kind: 'requires', decision: 'cross-screw-hold', options: ['original-bracket'] }],
    say: 'The screw of the lathe runs in the bracket of the lathe.',
  },
  {
    ...base,
    id: 'bumped-compound-loses-offsets',
    when: all(is('compound', 'keep-compound'), is('purpose', 'repeat-batches')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'In a batch, one bump of the compound moves every tool offset. Lock it with an extra screw.',
  },
];

export const rules: readonly Rule[] = [...fit, ...behaviour];
