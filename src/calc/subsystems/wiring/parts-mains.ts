import { all, always, is, measureAbove, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { knobStaysInHand } from '../spindle/drive.ts';
import { noisySpindle } from './wired.ts';

/** Everything between the outlet and the drives. */
export const mainsParts: readonly Part[] = [
  {
    id: 'logic-supply',
    subsystem: 'wiring',
    name: '24 V supply for switches and relays',
    note: '2.5 to 5 A, enclosed.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: always, qty: 1, why: 'feeds the stop circuit and the sensors' }],
  },
  {
    id: 'main-disconnect',
    subsystem: 'wiring',
    name: 'Main switch that can be locked',
    note: 'Cuts every live wire; you lock it before you open the cabinet.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: always, qty: 1, why: 'one place to switch everything off' }],
  },
  {
    id: 'fuses-and-breakers',
    subsystem: 'wiring',
    name: 'Fuses or breakers with holders',
    note: 'Three to five ways: one for each supply, for the spindle and for the control.',
    unit: 'lot',
    combine: 'most',
    spares: 'Five fuses of each value.',
    needs: [{ when: always, qty: 1, why: 'a fault takes one branch, not the wires' }],
  },
  {
    id: 'mains-cord',
    subsystem: 'wiring',
    name: 'Mains inlet, cord, plug and gland',
    note: 'Sized for the breaker it plugs into.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: always, qty: 1, why: 'brings the mains to the cabinet' }],
  },
  {
    id: 'second-earth',
    subsystem: 'wiring',
    name: 'Second earth wire',
    note: 'A second protective wire, or a fixed connection, as the local code says.',
    unit: 'kit',
    combine: 'most',
    needs: [
      {
        when: measureAbove('earth-leakage', 0.0035),
        qty: 1,
        why: 'more than 3.5 mA leaks to earth when all is well',
      },
    ],
  },
  {
    id: 'mains-filter',
    subsystem: 'wiring',
    name: 'Mains filter against noise',
    note: 'Screwed to bare metal beside the drive; some drives have one inside.',
    unit: 'each',
    combine: 'most',
    needs: [
      { when: noisySpindle, qty: 1, why: 'the spindle drive' },
      { when: is('motor-supply', 'mains-direct'), qty: 1, why: 'the mains servo drives' },
    ],
  },
  {
    id: 'dedicated-circuit',
    subsystem: 'wiring',
    name: 'New circuit, put in by an electrician',
    note: 'Ask for a quotation early: the distance to the board makes the price.',
    unit: 'job',
    combine: 'most',
    needs: [{ when: is('supply-circuit', 'new-circuit'), qty: 1, why: 'a line of its own for the lathe' }],
  },
  {
    id: 'residual-device',
    subsystem: 'wiring',
    name: 'Residual-current device suited to drives (ground-fault)',
    note: 'The manual of the drive says which type: often A, sometimes F or B, never AC. An electrician chooses.',
    unit: 'each',
    combine: 'most',
    needs: [
      { when: noisySpindle, qty: 1, why: 'a spindle drive leaks current that a plain device misreads' },
      {
        when: is('motor-supply', 'mains-direct'),
        qty: 1,
        why: 'mains servo drives leak current that a plain device misreads',
      },
      { when: is('supply-circuit', 'new-circuit'), qty: 1, why: 'goes in with the new circuit' },
      { when: is('chips-and-coolant', 'flood'), qty: 1, why: 'water beside mains' },
    ],
  },
  {
    id: 'contactor',
    subsystem: 'wiring',
    name: 'Contactor',
    note: 'A heavy-duty relay rated for motors; linked contacts where a safety relay watches it. Where drive and speed board both simply lose power, one with poles for both does.',
    unit: 'each',
    combine: 'sum',
    needs: [
      { when: always, qty: 1, why: 'cuts the axis drives' },
      {
        when: all(not(is('spindle-motor', 'keep-single-phase')), not(knobStaysInHand)),
        qty: 1,
        why: 'cuts the spindle drive',
      },
    ],
  },
  {
    id: 'heartbeat-relay-part',
    subsystem: 'wiring',
    name: 'Heartbeat relay (charge pump)',
    note: 'Holds only while pulses come from the control.',
    unit: 'each',
    combine: 'most',
    inspect: 'Feed it steady high, steady low and nothing: it must let go each time.',
    needs: [
      { when: is('watchdog', 'heartbeat-relay'), qty: 1, why: 'drops the drives when the computer hangs' },
    ],
  },
];
