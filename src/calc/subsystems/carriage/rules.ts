import { all, any, atLeast, is, known, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { ballOnCarriage, largeLathe } from './screw.ts';

const base = { subsystem: 'carriage' } as const;

const drive: readonly Rule[] = [
  {
    ...base,
    id: 'curves-and-half-nut',
    when: all(is('purpose', 'profiles'), is('carriage-drive', 'original-lead-screw', 'rack-pinion')),
    then: [
      {
        kind: 'suggests',
        decision: 'carriage-drive',
        options: ['ball-screw-front', 'ball-screw-back', 'sliding-screw'],
      },
      { kind: 'warns', level: 'look' },
    ],
    say: 'For curves the play of the half-nut or the rack prints a step at every reversal of the carriage.',
  },
  {
    ...base,
    id: 'carriage-ball-screw-creeps',
    when: all(is('hand-use', 'hand-cranks'), ballOnCarriage),
    then: [
      { kind: 'suggests', decision: 'power-off-hold', options: ['holding-brake'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A ball screw turns by itself under cut when the drives are off: keep them on, fit a brake, or lock the gib. Cranks whirl under power: fold them away.',
  },
  {
    ...base,
    id: 'lead-screw-needs-no-screw',
    when: is('carriage-drive', 'original-lead-screw'),
    then: [
      { kind: 'asksNot', decisions: ['carriage-nut', 'carriage-screw-ends', 'carriage-screw-machining'] },
      { kind: 'warns', level: 'note' },
    ],
    say: 'The lead screw stays; its end float must be taken out with thrust bearings.',
  },
  {
    ...base,
    id: 'kit-for-a-lead-screw-motor',
    when: all(is('driven-axes', 'carriage-only'), is('carriage-drive', 'original-lead-screw')),
    then: [{ kind: 'rulesOut', decision: 'buying', options: ['ready-kit'] }],
    say: 'A ready kit is brackets and nut housings for ball screws; a motor on the old lead screw uses none of them.',
  },
  {
    ...base,
    id: 'rack-needs-no-screw',
    when: is('carriage-drive', 'rack-pinion'),
    then: [
      { kind: 'asksNot', decisions: ['carriage-nut', 'carriage-screw-ends', 'carriage-screw-machining'] },
    ],
    say: 'With the rack there is no screw to choose.',
  },
  {
    ...base,
    id: 'sliding-screw-has-no-ball-nut',
    when: is('carriage-drive', 'sliding-screw'),
    then: [{ kind: 'asksNot', decisions: ['carriage-nut'] }],
    say: 'Grades of ball nut do not apply to a sliding screw.',
  },
  {
    ...base,
    id: 'sliding-carriage-screw-wastes-torque',
    when: is('carriage-drive', 'sliding-screw', 'original-lead-screw'),
    then: [
      { kind: 'assumes', name: 'carriage-screw-efficiency', value: 'from 0.2 to 0.45' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'A sliding screw turns less than half of the motor torque into push.',
  },
  {
    ...base,
    id: 'rear-screw-clearance',
    when: is('carriage-drive', 'ball-screw-back'),
    then: [
      { kind: 'addsCheck', check: 'slide-clearance' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'With the screw behind, check tailstock, splash tray and wall at both ends of travel.',
  },
];

const apron: readonly Rule[] = [
  {
    ...base,
    id: 'front-screw-needs-apron-space',
    when: is('carriage-drive', 'ball-screw-front'),
    then: [{ kind: 'requires', decision: 'apron', options: ['strip-apron', 'replace-apron'] }],
    say: 'The nut of a front screw needs the space of the half-nut, so the inside of the apron must go.',
  },
  {
    ...base,
    id: 'lead-screw-and-rack-need-the-apron',
    when: is('carriage-drive', 'original-lead-screw', 'rack-pinion'),
    then: [{ kind: 'requires', decision: 'apron', options: ['keep-apron'] }],
    say: 'The half-nut or the pinion in the apron is what drives the carriage.',
  },
  {
    ...base,
    id: 'twin-nuts-need-apron-space',
    when: is('carriage-drive', 'sliding-screw'),
    then: [{ kind: 'requires', decision: 'apron', options: ['strip-apron', 'replace-apron'] }],
    say: 'Twin nuts need the same space as a ball nut, so the inside of the apron must go.',
  },
  {
    ...base,
    id: 'reversible-keeps-the-apron-casting',
    when: is('hand-use', 'fully-reversible'),
    then: [{ kind: 'rulesOut', decision: 'apron', options: ['strip-apron'] }],
    say: 'You want nothing cut that cannot be put back: the apron comes off whole and is kept in a box.',
  },
  {
    ...base,
    id: 'reversible-front-screw-replaces-apron',
    when: all(is('hand-use', 'fully-reversible'), is('carriage-drive', 'ball-screw-front')),
    then: [{ kind: 'requires', decision: 'apron', options: ['replace-apron'] }],
    say: 'A front screw on a lathe that must go back as it was takes a new plate in place of the boxed apron.',
  },
  {
    ...base,
    id: 'motor-must-not-turn-the-gearbox',
    when: is('carriage-drive', 'original-lead-screw'),
    then: [{ kind: 'requires', decision: 'old-feeds', options: ['disable-old-feeds', 'remove-old-feeds'] }],
    say: 'A motor on the lead screw would drive the old change gears and gearbox backwards: disengage or remove them.',
  },
  {
    ...base,
    id: 'power-cross-feed-goes-with-the-apron',
    when: all(
      is('power-cross-feed', 'has-power-cross-feed'),
      any(is('carriage-drive', 'ball-screw-front'), is('apron', 'strip-apron', 'replace-apron')),
    ),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Power cross feed goes with the gears of the apron.',
  },
  {
    ...base,
    id: 'old-feeds-can-be-knocked-in',
    when: is('old-feeds', 'leave-old-feeds'),
    then: [
      { kind: 'suggests', decision: 'old-feeds', options: ['remove-old-feeds', 'disable-old-feeds'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A feed lever or a carriage lock left in working order gets knocked in one day: the motor stalls, or drives the gears backwards.',
  },
];

const ends: readonly Rule[] = [
  {
    ...base,
    id: 'long-screw-held-at-one-end',
    when: all(is('carriage-screw-ends', 'one-end-held'), atLeast('carriage-travel', 0.3001)),
    then: [
      { kind: 'addsCheck', check: 'carriage-whirl' },
      { kind: 'addsCheck', check: 'carriage-buckling' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A long screw held at one end only bends under push and whips at speed: hold the other end too.',
  },
  {
    ...base,
    id: 'carriage-seats-bored-first',
    when: is('carriage-screw-ends', 'made-angular-block', 'both-ends-held'),
    then: [{ kind: 'gate', gate: 'bored-seats', of: ['bore-bearing-seats'], before: ['strip-carriage'] }],
    say: 'The bearing seats are bored before the lathe comes apart.',
  },
  {
    ...base,
    id: 'turning-hard-screw-ends',
    when: is('carriage-screw-machining', 'turned-here-ends'),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'The screw is hard: carbide, a steady, the nut parked on a sleeve, and the screw must pass through the spindle or fit between centres.',
  },
  {
    ...base,
    id: 'direct-motor-needs-room',
    when: is('carriage-coupling', 'carriage-direct'),
    then: [
      { kind: 'addsCheck', check: 'slide-clearance' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Motor, coupling and 30 mm must fit beyond the end of the bed.',
  },
  {
    ...base,
    id: 'large-pulley-needs-room',
    when: is('carriage-coupling', 'carriage-belt-2-1'),
    then: [
      { kind: 'addsCheck', check: 'slide-clearance' },
      { kind: 'addsCheck', check: 'carriage-motor-speed' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'The large pulley needs room beside the bed and tray, and the top speed of the carriage halves.',
  },
  {
    ...base,
    id: 'ground-screw-needs-good-ends',
    when: is('carriage-nut', 'ground-preloaded-nut'),
    then: [
      {
        kind: 'requires',
        decision: 'carriage-screw-ends',
        options: ['made-angular-block', 'both-ends-held', 'bought-end-blocks'],
      },
    ],
    say: 'A ground screw is wasted on an end that is not held.',
  },
  {
    ...base,
    id: 'ground-screw-in-bought-blocks',
    when: all(is('carriage-nut', 'ground-preloaded-nut'), is('carriage-screw-ends', 'bought-end-blocks')),
    then: [
      {
        kind: 'suggests',
        decision: 'carriage-screw-ends',
        options: ['made-angular-block', 'both-ends-held'],
      },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A ground screw in bought blocks loses at the bearing what it gained at the thread: measure their play, and expect to change the bearings.',
  },
  {
    ...base,
    id: 'stretched-screw-on-a-small-lathe',
    when: all(is('carriage-screw-ends', 'both-ends-held'), not(largeLathe), known('swing')),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'Two held ends earn their trouble on a large lathe or at high speed.',
  },
];

export const rules: readonly Rule[] = [...drive, ...apron, ...ends];
