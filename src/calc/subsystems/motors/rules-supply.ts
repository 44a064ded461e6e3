import { all, any, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { carriageDriven, crossDriven } from './driven.ts';

/** Which drives and supplies go with which motors. */
export const supplyRules: readonly Rule[] = [
  {
    id: 'sets-bring-their-drive',
    subsystem: 'motors',
    when: is('axis-motor', 'mains-servo', 'used-dc-servo'),
    then: [{ kind: 'asksNot', decisions: ['drives'] }],
    say: 'Servo sets come with their own drives, so there is nothing to choose.',
  },
  {
    id: 'used-servos-come-as-found',
    subsystem: 'motors',
    when: is('axis-motor', 'used-dc-servo'),
    then: [{ kind: 'asksNot', decisions: ['motor-size'] }],
    say: 'With used servos the size is the one that you find.',
  },
  {
    id: 'board-drives-small-plain-steppers',
    subsystem: 'motors',
    when: is('drives', 'multi-axis-board'),
    then: [
      { kind: 'requires', decision: 'axis-motor', options: ['open-loop-stepper'] },
      { kind: 'requires', decision: 'motor-size', options: ['face-57-both'] },
      { kind: 'scalesTask', tasks: ['fit-out-cabinet'], by: 0.85 },
    ],
    say: 'A single board drives small plain steppers only; it takes the place of their separate drives and of many wires.',
  },
  {
    id: 'built-in-drives-are-for-steppers',
    subsystem: 'motors',
    when: is('drives', 'built-in-drives'),
    then: [
      { kind: 'requires', decision: 'axis-motor', options: ['open-loop-stepper', 'closed-loop-stepper'] },
      { kind: 'scalesTask', tasks: ['fit-out-cabinet'], by: 0.85 },
    ],
    say: 'Only steppers are sold with the drive inside; it leaves the cabinet with less to wire.',
  },
  {
    id: 'stepper-drives-take-no-mains',
    subsystem: 'motors',
    when: is('drives', 'multi-axis-board', 'built-in-drives'),
    then: [{ kind: 'rulesOut', decision: 'motor-supply', options: ['mains-direct'] }],
    say: 'Boards and built-in drives are made for low voltage: mains would destroy them.',
  },
  {
    id: 'transformer-kills-boards',
    subsystem: 'motors',
    when: any(
      is('drives', 'multi-axis-board'),
      all(is('drives', 'built-in-drives'), is('motor-size', 'face-57-both')),
    ),
    then: [{ kind: 'rulesOut', decision: 'motor-supply', options: ['transformer-supply'] }],
    say: 'Boards and small built-in drives stand 36 to 50 V, and a transformer supply gives 45 to 70 V.',
  },
  {
    id: 'mains-direct-is-for-servos',
    subsystem: 'motors',
    when: is('motor-supply', 'mains-direct'),
    then: [{ kind: 'requires', decision: 'axis-motor', options: ['mains-servo'] }],
    say: 'Only mains servos can be fed straight from the mains.',
  },
  {
    id: 'servos-take-mains',
    subsystem: 'motors',
    when: is('axis-motor', 'mains-servo'),
    then: [{ kind: 'requires', decision: 'motor-supply', options: ['mains-direct'] }],
    say: 'These servo drives take mains, so a low-voltage supply would have nothing to feed.',
  },
  {
    id: 'used-servos-take-a-transformer',
    subsystem: 'motors',
    when: is('axis-motor', 'used-dc-servo'),
    then: [{ kind: 'requires', decision: 'motor-supply', options: ['transformer-supply'] }],
    say: 'Used servo drives want 45 to 70 V that swallows braking: a transformer, rectifier and capacitor.',
  },
  {
    id: 'transformer-kills-50-volt-drives',
    subsystem: 'motors',
    when: all(is('axis-motor', 'open-loop-stepper', 'closed-loop-stepper'), is('motor-size', 'face-57-both')),
    then: [{ kind: 'rulesOut', decision: 'motor-supply', options: ['transformer-supply'] }],
    say: 'A transformer supply gives 45 to 70 V, and the drives of 57 mm steppers stand 50 V: it would kill them.',
  },
  {
    id: 'forty-volts-for-50-volt-drives',
    subsystem: 'motors',
    when: all(is('motor-supply', 'enclosed-supply'), is('motor-size', 'face-57-both', 'face-57-and-86')),
    then: [
      { kind: 'assumes', name: 'supply-share-of-drive-limit', value: 0.8 },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Set the supply to 36 to 40 V for drives that stand 50 V; 48 V belongs on drives for 60 V or more.',
  },
  {
    id: 'large-steppers-want-a-second-supply',
    subsystem: 'motors',
    when: all(
      is('motor-size', 'face-57-and-86', 'face-86-both'),
      is('motor-supply', 'enclosed-supply'),
      is('axis-motor', 'open-loop-stepper', 'closed-loop-stepper'),
      carriageDriven,
      crossDriven,
    ),
    then: [{ kind: 'warns', level: 'note' }],
    say: '86 mm steppers are slow on 40 V, and small drives cannot take more: the plan buys a second supply, so keep the two voltages apart.',
  },
  {
    id: 'five-milliamp-device-and-mains-drives',
    subsystem: 'motors',
    when: all(is('ground-fault-device', 'trips-at-5-ma'), is('motor-supply', 'mains-direct')),
    then: [
      { kind: 'addsCheck', check: 'earth-leakage' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'The filters of mains servo drives leak about as much as your outlet allows before it trips; ask an electrician, and never bypass it.',
  },
];
