import { all, always, atLeast, is, known, measureAbove } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { phaseDrive } from './wired.ts';

/** Cable, housing, mains, switches, chips and oil. */
export const houseRules: readonly Rule[] = [
  {
    id: 'batches-need-home',
    subsystem: 'wiring',
    when: is('purpose', 'repeat-batches'),
    then: [{ kind: 'rulesOut', decision: 'home-limits', options: ['no-homing'] }],
    say: 'Batches need every slide to find the same place again, so home switches are not optional.',
  },
  {
    id: 'limits-closed-and-filtered',
    subsystem: 'wiring',
    when: is('home-limits', 'home-and-limit-switches'),
    then: [
      { kind: 'assumes', name: 'limit-contacts', value: 'normally closed, 24 V' },
      { kind: 'assumes', name: 'limit-filter-ms', value: 10 },
    ],
    say: 'Limit switches are closed while all is well, on 24 V, with 5 to 10 ms of filtering: a broken wire then reads as a limit.',
  },
  {
    id: 'drive-needs-screen-and-steel',
    subsystem: 'wiring',
    when: phaseDrive,
    then: [
      { kind: 'requires', decision: 'cable', options: ['screened-cable', 'moulded-leads'] },
      { kind: 'requires', decision: 'housing', options: ['steel-cabinet'] },
      { kind: 'addsCheck', check: 'chuck-speed' },
      { kind: 'addsCheck', check: 'supply-current' },
      { kind: 'addsCheck', check: 'earth-leakage' },
    ],
    say: 'Noise, leakage and too much speed come with a spindle drive: it wants screened cable, a steel cabinet and a residual device made for drives.',
  },
  {
    id: 'servos-need-screened-cable',
    subsystem: 'wiring',
    when: is('axis-motor', 'mains-servo'),
    then: [{ kind: 'requires', decision: 'cable', options: ['screened-cable', 'moulded-leads'] }],
    say: 'Servo encoders lose counts on plain wire, and a servo that loses counts moves by itself.',
  },
  {
    id: 'plain-wire-beside-spindle-drive',
    subsystem: 'wiring',
    when: is('spindle-motor', 'three-phase-drive', 'doubler-drive', 'servo-spindle'),
    then: [{ kind: 'rulesOut', decision: 'cable', options: ['unscreened-wire'] }],
    say: 'Plain wire beside a spindle drive picks up its noise as false limits and lost counts.',
  },
  {
    id: 'plain-wire-and-servos',
    subsystem: 'wiring',
    when: is('axis-motor', 'mains-servo'),
    then: [{ kind: 'rulesOut', decision: 'cable', options: ['unscreened-wire'] }],
    say: 'Mains servos radiate noise and read fine encoder signals, so plain wire is out.',
  },
  {
    id: 'no-spindle-drive-in-plastic',
    subsystem: 'wiring',
    when: phaseDrive,
    then: [{ kind: 'rulesOut', decision: 'housing', options: ['plastic-box'] }],
    say: 'A spindle drive is too hot and too loud for a plastic box.',
  },
  {
    id: 'open-board-only-with-adapters',
    subsystem: 'wiring',
    when: always,
    then: [{ kind: 'rulesOut', decision: 'housing', options: ['open-board'] }],
    say: 'Supplies with screw terminals carry live mains, so an open board is out; only sealed plug-in adapters may stand there.',
  },
  {
    id: 'outlet-too-small',
    subsystem: 'wiring',
    when: all(
      is('supply-circuit', 'existing-outlet'),
      measureAbove('machine-current', { fact: 'outlet-amps', times: 0.8 }),
    ),
    then: [
      { kind: 'suggests', decision: 'supply-circuit', options: ['new-circuit'] },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'The machine draws more than eight tenths of what the outlet may give; ask an electrician about a circuit of its own.',
  },
  {
    id: 'large-drive-on-120-volts',
    subsystem: 'wiring',
    when: all(
      is('spindle-motor', 'three-phase-drive', 'doubler-drive'),
      is('mains-supply', 'volts-120'),
      known('spindle-power'),
      atLeast('spindle-power', 750),
    ),
    then: [{ kind: 'requires', decision: 'supply-circuit', options: ['new-circuit'] }],
    say: 'A drive of 0.75 kW on 120 V is commonly rated for 16 to 20 A of input, too much for an ordinary outlet with the rest of the machine.',
  },
  {
    id: 'ordinary-drive-wants-230-volts',
    subsystem: 'wiring',
    when: all(is('spindle-motor', 'three-phase-drive'), is('mains-supply', 'volts-120')),
    then: [{ kind: 'requires', decision: 'supply-circuit', options: ['new-circuit'] }],
    say: 'An ordinary spindle drive takes 230 V, which an electrician brings with a new circuit; from 120 V only a doubler drive runs.',
  },
  {
    id: 'five-milliamp-device-and-spindle-drive',
    subsystem: 'wiring',
    when: all(
      is('ground-fault-device', 'trips-at-5-ma'),
      is('spindle-motor', 'three-phase-drive', 'doubler-drive', 'servo-spindle'),
    ),
    then: [
      { kind: 'addsCheck', check: 'earth-leakage' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'The filter of a spindle drive leaks about what your outlet allows before it trips; ask an electrician, and never bypass it.',
  },
  {
    id: 'second-earth-for-leakage',
    subsystem: 'wiring',
    when: measureAbove('earth-leakage', 0.0035),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'More than 3.5 mA to earth asks for a second earth wire or a fixed connection; the plan buys the wire.',
  },
  {
    id: 'flood-needs-sealing',
    subsystem: 'wiring',
    when: is('chips-and-coolant', 'flood'),
    then: [
      { kind: 'requires', decision: 'housing', options: ['steel-cabinet'] },
      { kind: 'assumes', name: 'sensor-sealing', value: 'IP67' },
      { kind: 'addsTask', task: 'coolant-leak-test' },
    ],
    say: 'Water and mains: flood asks for a steel cabinet, sealed sensors, a residual device and a leak test with the power off.',
  },
  {
    id: 'oil-holes-while-stripped',
    subsystem: 'wiring',
    when: is('lubrication', 'one-shot-oiler'),
    then: [
      { kind: 'gate', gate: 'carriage oil holes', of: ['fit-oiler'], before: ['align-carriage-screw'] },
      { kind: 'gate', gate: 'cross-slide oil holes', of: ['fit-oiler-cross'], before: ['fit-cross-screw'] },
    ],
    say: 'Oil holes are drilled while the slides are apart, before the screws go in.',
  },
];
