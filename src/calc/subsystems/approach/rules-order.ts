import { all, always, is, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { hasSpareLathe, leadScrewAlone, leadScrewSynchroniser } from './paths.ts';

/** What must be done before what. */
export const orderRules: readonly Rule[] = [
  {
    id: 'make-first-before-strip-down',
    subsystem: 'approach',
    when: not(hasSpareLathe),
    then: [
      {
        kind: 'gate',
        gate: 'make first: carriage',
        of: ['spare-of-each-carriage'],
        before: ['strip-carriage'],
      },
      {
        kind: 'gate',
        gate: 'make first: cross slide',
        of: ['spare-of-each-cross'],
        before: ['strip-cross-slide'],
      },
      {
        kind: 'gate',
        gate: 'make first: spindle',
        of: ['spare-of-each-spindle'],
        before: ['swap-spindle-motor'],
      },
    ],
    say: 'With no other lathe, every turned and bored part of a stage, and a spare of each, is on the shelf before that stage comes apart.',
  },
  {
    id: 'everything-made-first-at-once',
    subsystem: 'approach',
    when: all(not(hasSpareLathe), not(is('order-of-work', 'in-stages'))),
    then: [
      {
        kind: 'gate',
        gate: 'make first: all',
        of: ['spare-of-each-cross', 'spare-of-each-spindle'],
        before: ['strip-carriage'],
      },
    ],
    say: 'Taken apart once, the lathe can make nothing in between: the parts of all three stages are made before the first bolt is undone.',
  },
  {
    id: 'stages-in-order',
    subsystem: 'approach',
    when: is('order-of-work', 'in-stages'),
    then: [
      { kind: 'orders', tasks: ['first-powered-carriage', 'fit-spindle-sensor', 'strip-cross-slide'] },
      { kind: 'orders', tasks: ['make-stage-one-usable', 'swap-spindle-motor'] },
      { kind: 'orders', tasks: ['make-stage-two-usable', 'strip-cross-slide'] },
    ],
    say: 'Carriage, then spindle sensor, then cross slide: each stage ends with a lathe that works.',
  },
  {
    id: 'bench-electrics-before-strip-down',
    subsystem: 'approach',
    when: is('order-of-work', 'bench-electrics-first'),
    then: [
      {
        kind: 'gate',
        gate: 'electrics proved',
        of: ['prove-stop-circuit', 'bench-motors', 'alarm-test'],
        before: ['strip-carriage', 'strip-cross-slide', 'swap-spindle-motor'],
      },
      { kind: 'gate', gate: 'bench rig', of: ['bench-rig'], before: ['first-power-control'] },
    ],
    say: 'Control, motors and stop are proved on the bench before a bolt of the lathe is undone.',
  },
  {
    id: 'baseline-before-strip-down',
    subsystem: 'approach',
    when: always,
    then: [
      {
        kind: 'gate',
        gate: 'baseline',
        of: ['two-collar-baseline'],
        before: ['strip-carriage', 'strip-cross-slide', 'swap-spindle-motor'],
      },
    ],
    say: 'A test bar is turned before anything is undone: it is the only proof of what the conversion changed.',
  },
  {
    id: 'layout-before-screw-length',
    subsystem: 'approach',
    when: always,
    then: [{ kind: 'gate', gate: 'layout', of: ['layout-sketch'], before: ['screw-drawings'] }],
    say: 'Where the blocks sit decides how long the screws are, so the sketch comes before the order.',
  },
  {
    id: 'only-lathe-all-at-once',
    subsystem: 'approach',
    when: all(
      is('which-lathe', 'only-lathe'),
      is('order-of-work', 'all-at-once'),
      not(leadScrewSynchroniser),
    ),
    then: [
      { kind: 'suggests', decision: 'order-of-work', options: ['in-stages', 'bench-electrics-first'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Your only lathe is out of use from the first bolt to the last test: look at the weeks in the plan before you choose this.',
  },
  {
    id: 'learning-favours-stages',
    subsystem: 'approach',
    when: all(is('purpose', 'learning'), is('order-of-work', 'all-at-once')),
    then: [
      { kind: 'suggests', decision: 'order-of-work', options: ['in-stages'] },
      { kind: 'warns', level: 'note' },
    ],
    say: 'For learning, stages give first chips early, and that keeps a project alive.',
  },
  {
    id: 'little-comes-off-to-sell',
    subsystem: 'approach',
    when: all(is('old-parts', 'sell-old-parts'), leadScrewAlone),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'With a motor on the old lead screw only change gears come off, so the plan counts nothing for selling them.',
  },
  {
    id: 'reversible-keeps-old-parts',
    subsystem: 'approach',
    when: is('hand-use', 'fully-reversible'),
    then: [{ kind: 'rulesOut', decision: 'old-parts', options: ['sell-old-parts'] }],
    say: 'The way back needs the old parts, so they are not sold.',
  },
];
