import { all, always, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { programStarts, servoAxes } from './wired.ts';

/** Stop, guard and protection of people. */
export const guardingParts: readonly Part[] = [
  {
    id: 'stop-button',
    subsystem: 'wiring',
    name: 'Red stop button that latches',
    note: 'Direct-opening contacts, two of them, normally closed.',
    unit: 'each',
    combine: 'sum',
    needs: [
      { when: always, qty: 1, why: 'at the headstock, within reach' },
      { when: is('stop-circuit', 'cuts-power-watched'), qty: 1, why: 'a second one at the tailstock end' },
    ],
  },
  {
    id: 'spare-stop-button',
    subsystem: 'wiring',
    name: 'Spare stop button',
    note: 'The same kind, on the shelf: a lathe whose button fails stands still.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: programStarts, qty: 1, why: 'nobody is tempted to bridge a broken one' }],
  },
  {
    id: 'safety-relay',
    subsystem: 'wiring',
    name: 'Safety relay, two channels',
    note: 'Compares both channels and the feedback of the contactors at each start.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: is('stop-circuit', 'cuts-power-watched'), qty: 1, why: 'watches the stop circuit' }],
  },
  {
    id: 'off-delay-timer',
    subsystem: 'wiring',
    name: 'Off-delay timer',
    note: 'Opens the contactor a set time after the button, with no computer in between.',
    unit: 'each',
    combine: 'most',
    needs: [
      {
        when: is('spindle-stop', 'ramp-then-cut'),
        qty: 1,
        why: 'lets the spindle slow down before power goes',
      },
      {
        when: all(is('stop-circuit', 'cuts-power'), servoAxes, not(is('spindle-stop', 'drive-safe-off'))),
        qty: 1,
        why: 'lets the servos stop before power goes',
      },
    ],
  },
  {
    id: 'spindle-brake',
    subsystem: 'wiring',
    name: 'Brake that closes when power goes',
    note: 'Band, disc or motor brake; measure the room at the pulley first.',
    unit: 'set',
    combine: 'most',
    needs: [{ when: is('spindle-stop', 'mechanical-brake'), qty: 1, why: 'brings the spindle to rest' }],
  },
  {
    id: 'guard-with-switch',
    subsystem: 'wiring',
    name: 'Hinged chuck guard with its switch',
    note: 'Clear polycarbonate, and a switch that opens with force when the guard is lifted.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    needs: [
      {
        when: is('chuck-guard', 'shield-with-switch'),
        qty: 1,
        why: 'keeps the spindle off while it is open',
      },
    ],
  },
  {
    id: 'hinged-shield-part',
    subsystem: 'wiring',
    name: 'Hinged chuck shield, no switch',
    note: 'Clear polycarbonate on a rod behind the headstock.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('chuck-guard', 'hinged-shield'), qty: 1, why: 'keeps chips and oil away' }],
  },
  {
    id: 'chip-shields',
    subsystem: 'wiring',
    name: 'Clear chip shields',
    note: 'Polycarbonate, not acrylic, which splinters.',
    unit: 'lot',
    combine: 'sum',
    scaled: true,
    spares: 'One sheet.',
    needs: [
      {
        when: all(programStarts, not(is('chips-and-coolant', 'flood'))),
        qty: 1,
        why: 'between chips and your face while a program cuts',
      },
      { when: is('chips-and-coolant', 'mist-or-air'), qty: 1, why: 'chips blown sideways and behind' },
    ],
  },
  {
    id: 'splash-enclosure',
    subsystem: 'wiring',
    name: 'Splash walls, tray, tank and pump',
    note: 'Drains to one point that is not above the cabinet.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('chips-and-coolant', 'flood'), qty: 1, why: 'keeps coolant inside' }],
  },
  {
    id: 'eye-protection',
    subsystem: 'wiring',
    name: 'Eye protection, chip hook, extinguisher',
    note: 'An extinguisher for oil and electrics, by the door.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: always, qty: 1, why: 'for whoever stands at the lathe' }],
  },
];
