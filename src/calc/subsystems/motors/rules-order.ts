import { all, is, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';

/** What has to be done before what, because of the motors. */
export const orderRules: readonly Rule[] = [
  {
    id: 'motor-plates-before-strip-down',
    subsystem: 'motors',
    when: all(is('motor-size', 'face-57-and-86', 'face-86-both'), not(is('which-lathe', 'spare-lathe'))),
    then: [
      {
        kind: 'gate',
        gate: 'motor plates',
        of: ['heavy-motor-mounts'],
        before: ['spare-of-each-carriage', 'strip-carriage', 'strip-cross-slide'],
      },
    ],
    say: 'The registers of large motors are bored on this lathe, so their plates are made before it comes apart.',
  },
];
