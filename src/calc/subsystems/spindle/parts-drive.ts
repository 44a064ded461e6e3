import { all, any, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { byProgram, looseNose, newMotor, phaseMotor } from './drive.ts';

const base = { subsystem: 'spindle', unit: 'each', combine: 'most' } as const;
const once = (when: Part['needs'][number]['when'], why: string): Part['needs'] => [{ when, qty: 1, why }];

export const driveParts: readonly Part[] = [
  {
    ...base,
    id: 'spindle-drive',
    scaled: true,
    name: 'Speed drive for the spindle motor',
    note: 'Single-phase in, three-phase out, 0.75 to 1.5 kW. The input current on its plate decides about the outlet.',
    inspect: 'Plate against your outlet, terminal for a safe-off input.',
    needs: once(is('spindle-motor', 'three-phase-drive'), 'makes three phases and sets the speed'),
  },
  {
    ...base,
    id: 'doubler-drive-part',
    name: 'Doubler drive, 120 V in, three-phase 230 V out',
    note: 'Up to 0.75 kW on its plate; plan 0.55 kW at most.',
    inspect: 'Input current on its plate.',
    needs: once(is('spindle-motor', 'doubler-drive'), 'runs a three-phase motor from 120 V'),
  },
  {
    ...base,
    id: 'three-phase-motor',
    scaled: true,
    name: 'Three-phase motor, four poles',
    note: '0.55 to 1.1 kW, made for drives if you can get it. Compare shaft height, feet and shaft with the old one before you order.',
    inspect: 'Shaft diameter, key, height and feet.',
    needs: once(phaseMotor, 'turns the spindle'),
  },
  {
    ...base,
    id: 'brushless-set',
    unit: 'set',
    scaled: true,
    name: 'Brushless spindle motor and drive',
    note: '0.75 to 1.1 kW.',
    inspect: 'Shaft, mounting holes, isolation of the speed input.',
    needs: once(is('spindle-motor', 'brushless-kit'), 'turns the spindle'),
  },
  {
    ...base,
    id: 'servo-spindle-set',
    unit: 'set',
    scaled: true,
    name: 'Servo spindle motor and drive',
    note: '1 to 1.8 kW with its cables.',
    inspect: 'Shaft, ratio against the top speed of the spindle.',
    needs: once(is('spindle-motor', 'servo-spindle'), 'turns the spindle'),
  },
  {
    ...base,
    id: 'brake-resistor',
    name: 'Brake resistor',
    note: 'At or above the smallest ohms of the drive, rated for the peak of a stop, twice the mean.',
    needs: once(all(newMotor, is('reversing', 'forward-and-reverse')), 'takes the energy of a quick stop'),
  },
  {
    ...base,
    id: 'motor-mount',
    unit: 'lot',
    scaled: true,
    name: 'Plate, tensioner and pulley boring for the spindle motor',
    note: 'Made before the old motor comes out.',
    needs: once(newMotor, 'carries the new motor'),
  },
  {
    ...base,
    id: 'spindle-belts',
    unit: 'set',
    scaled: true,
    name: 'Belts and pulleys from motor to spindle',
    note: 'Ribbed or toothed. Keep two ratios.',
    spares: 'A spare belt.',
    needs: once(newMotor, 'drives the spindle'),
  },
  {
    ...base,
    id: 'speed-interface',
    name: 'Isolated 0 to 10 V interface',
    note: 'Keeps the drive’s noise and voltage away from the control.',
    spares: 'One spare.',
    needs: once(is('speed-command', 'speed-by-voltage'), 'sets the speed'),
  },
  {
    ...base,
    id: 'run-relays',
    name: 'Relays for run and reverse',
    note: 'For the signal terminals of a drive or board only; never to switch a motor. With a serial line they stay as the hard-wired enable.',
    needs: once(
      any(newMotor, all(is('spindle-motor', 'keep-speed-knob'), byProgram)),
      'start and stop the spindle by wire, whatever sets its speed',
    ),
  },
  {
    ...base,
    id: 'serial-adapter',
    name: 'Serial adapter for the drive',
    note: 'Isolated, two-wire.',
    needs: once(is('speed-command', 'speed-by-serial'), 'talks to the drive'),
  },
  {
    ...base,
    id: 'isolated-adapter',
    name: 'Isolated adapter for the speed-knob board',
    note: 'The knob side of the board can be live at mains.',
    needs: once(all(is('spindle-motor', 'keep-speed-knob'), byProgram), 'keeps mains away from the control'),
  },
  {
    ...base,
    id: 'motor-starter',
    name: 'Motor starter with overload and no-volt release',
    note: 'Motor-rated: starting takes about six times the running current. A small relay may only work its coil.',
    needs: once(
      is('spindle-motor', 'keep-single-phase'),
      'switches the motor safely, and keeps it off when power comes back',
    ),
  },
  {
    ...base,
    id: 'chuck-retention',
    unit: 'set',
    name: 'Lock for a screwed-on chuck',
    note: 'Clamps or a cross bolt that stop it unscrewing.',
    needs: [
      {
        when: all(is('reversing', 'forward-and-reverse'), looseNose),
        qty: 1,
        why: 'reverse or braking on a screwed nose',
      },
      {
        when: all(is('spindle-stop', 'mechanical-brake'), looseNose),
        qty: 1,
        why: 'a brake that grabs on a screwed nose',
      },
    ],
  },
  {
    ...base,
    id: 'line-choke',
    name: 'Line choke for the drive',
    note: 'Less current in peaks, less trouble on the mains.',
    needs: once(phaseMotor, 'calms the input of the drive'),
  },
];
