import { all, any, atLeast, below, is, known, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { leadScrewAlone } from '../purpose/paths.ts';

const notSpare = not(is('which-lathe', 'spare-lathe'));

export const rules: readonly Rule[] = [
  {
    id: 'rear-motor-or-rear-post',
    subsystem: 'tooling',
    when: is('cross-motor-place', 'rear-belt'),
    then: [{ kind: 'rulesOut', decision: 'tool-holding', options: ['quick-change-and-rear-post'] }],
    say: 'A motor behind the cross slide sits where the rear post would stand.',
  },
  {
    id: 'slotted-slide-takes-posts-or-gang',
    subsystem: 'tooling',
    when: is('compound', 'slotted-slide-plate'),
    then: [
      {
        kind: 'requires',
        decision: 'tool-holding',
        options: ['gang-tools', 'quick-change-post', 'quick-change-and-rear-post'],
      },
    ],
    say: 'A slotted slide carries gang tools or quick-change posts, front and rear; it suits neither the old block nor a changer.',
  },
  {
    id: 'gang-tools-need-slots',
    subsystem: 'tooling',
    when: all(is('tool-holding', 'gang-tools'), is('slide-slots', 'plain-slide')),
    then: [
      { kind: 'requires', decision: 'compound', options: ['slotted-slide-plate', 'slotted-riser-plate'] },
    ],
    say: 'Gang blocks bolt to a flat slide with slots, and yours has none until you add a plate.',
  },
  {
    id: 'gang-tools-need-travel',
    subsystem: 'tooling',
    when: is('tool-holding', 'gang-tools'),
    then: [
      { kind: 'addsCheck', check: 'gang-travel' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Gang tools must fit the cross travel: tools less one times their spacing, plus the radius of the work, plus clearance.',
  },
  {
    id: 'gang-tools-short-travel',
    subsystem: 'tooling',
    when: all(is('tool-holding', 'gang-tools'), known('cross-travel'), below('cross-travel', 0.0765)),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'With under 77 mm of cross travel, of which the conversion takes about 25, not even two gang tools at 35 mm will fit.',
  },
  {
    id: 'batches-need-tools-that-return',
    subsystem: 'tooling',
    when: all(is('purpose', 'repeat-batches'), is('tool-holding', 'four-way-block')),
    then: [
      { kind: 'suggests', decision: 'tool-holding', options: ['quick-change-post', 'gang-tools'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'In a four-way block tools do not come back to place, so every part of a batch starts with touching off again.',
  },
  {
    id: 'few-tools-to-table',
    subsystem: 'tooling',
    when: is('tool-holding', 'four-way-block'),
    then: [{ kind: 'scalesTask', tasks: ['tool-table-and-backup'], by: 0.7 }],
    say: 'With one or two tools that stay put, the tool table is short.',
  },
  {
    id: 'tailstock-motor-needs-its-answer',
    subsystem: 'tooling',
    when: is('driven-axes', 'both-and-tailstock'),
    then: [{ kind: 'requires', decision: 'holes', options: ['motor-tailstock'] }],
    say: 'You chose a motor for the tailstock, so that is how the holes are made.',
  },
  {
    id: 'motor-tailstock-is-a-driven-axis',
    subsystem: 'tooling',
    when: is('holes', 'motor-tailstock'),
    then: [{ kind: 'requires', decision: 'driven-axes', options: ['both-and-tailstock'] }],
    say: 'A motor on the tailstock is a third driven movement: it comes on top of both slides.',
  },
  {
    id: 'lead-screw-motor-leaves-the-tools',
    subsystem: 'tooling',
    when: leadScrewAlone,
    then: [
      {
        kind: 'asksNot',
        decisions: ['tool-holding', 'work-holding', 'bar-feed', 'holes', 'tool-offsets'],
      },
    ],
    say: 'Only the old lead screw gets a motor: tool post, chuck and tailstock stay as they are and are worked by hand.',
  },
  {
    id: 'carriage-only-leaves-tailstock',
    subsystem: 'tooling',
    when: is('driven-axes', 'carriage-only'),
    then: [
      { kind: 'asksNot', decisions: ['cross-screw', 'cross-nut', 'cross-motor-place', 'cross-screw-hold'] },
      { kind: 'rulesOut', decision: 'holes', options: ['motor-tailstock'] },
    ],
    say: 'Only the carriage gets a motor, so the cross slide and the tailstock stay by hand.',
  },
  {
    id: 'drill-needs-driven-carriage',
    subsystem: 'tooling',
    when: is('driven-axes', 'cross-slide-only'),
    then: [{ kind: 'rulesOut', decision: 'holes', options: ['drill-in-tool-post'] }],
    say: 'A drill in the tool post is pushed by the carriage, and yours is moved by hand.',
  },
  {
    id: 'hand-drilling-stops-the-cycle',
    subsystem: 'tooling',
    when: all(is('holes', 'tailstock-by-hand'), is('work-holding', 'power-chuck')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Drilling by hand stops the cycle that the power chuck was bought for.',
  },
  {
    id: 'bar-in-a-tube',
    subsystem: 'tooling',
    when: any(
      is('work-holding', 'spring-collets', 'lever-collets', 'power-chuck'),
      is('bar-feed', 'bar-against-stop', 'bar-puller'),
    ),
    then: [{ kind: 'warns', level: 'stop' }],
    say: 'Bar that turns behind the headstock must be shorter than three diameters or run in a fixed tube: loose bar bends, strikes and has killed.',
  },
  {
    id: 'puller-needs-easy-grip',
    subsystem: 'tooling',
    when: all(is('bar-feed', 'bar-puller'), is('work-holding', 'jaw-chuck')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'A bar puller saves little while you open and close the jaws with a key.',
  },
  {
    id: 'puller-needs-driven-carriage',
    subsystem: 'tooling',
    when: is('driven-axes', 'cross-slide-only'),
    then: [{ kind: 'rulesOut', decision: 'bar-feed', options: ['bar-puller'] }],
    say: 'The carriage pulls the bar, and yours is moved by hand.',
  },
  {
    id: 'thick-work-in-collets',
    subsystem: 'tooling',
    when: all(is('work-holding', 'lever-collets'), not(atLeast('spindle-bore', 0.018))),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'With a spindle hole under 18 mm a draw tube leaves room for very thin bar only.',
  },
  {
    id: 'touch-plate-takes-an-input',
    subsystem: 'tooling',
    when: is('tool-offsets', 'touch-plate'),
    then: [{ kind: 'assumes', name: 'inputs-needed', value: 1 }],
    say: 'A touch plate takes one input of the control.',
  },
  {
    id: 'back-plate-before-strip-down',
    subsystem: 'tooling',
    when: all(is('work-holding', 'spring-collets'), notSpare),
    then: [
      {
        kind: 'gate',
        gate: 'collet back plate',
        of: ['fit-collet-chuck'],
        before: ['spare-of-each-carriage', 'strip-carriage', 'swap-spindle-motor'],
      },
    ],
    say: 'The back plate of the collet chuck is turned on this lathe, so it is done before anything comes apart.',
  },
  {
    id: 'power-chuck-proved-before-power-on',
    subsystem: 'tooling',
    when: is('work-holding', 'power-chuck'),
    then: [
      { kind: 'gate', gate: 'grip interlock', of: ['fit-power-chuck'], before: ['first-power-on-machine'] },
    ],
    say: 'Loss of air has to stop the spindle before the machine runs as a whole.',
  },
];
