import { is } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

const drives: Decision = {
  id: 'drives',
  subsystem: 'motors',
  place: 'guide',
  name: 'Drive hardware',
  ask: 'Where do the drives for the steppers sit?',
  why: 'A drive turns the pulses of the control into motor current. It is the part most often killed, so swapping it matters.',
  thumb: 'Drives that can be swapped one by one; keep one spare of the cheapest.',
  askWhen: is('axis-motor', 'open-loop-stepper', 'closed-loop-stepper'),
  assume: ['separate-drives', 'multi-axis-board', 'built-in-drives'],
  assumeWhy: 'Until you choose we plan with one drive for each motor, which can be swapped alone.',
  open: 'options',
  options: [
    {
      id: 'separate-drives',
      label: 'One drive for each motor',
      means: 'A box the size of a paperback for each motor, in the cabinet.',
      gains: 'Cool, easy to test one at a time, easy to replace.',
      wrong:
        'More wires, and more places to get one wrong. A loose phase wire shows as a motor that hums and shakes.',
      skill: 2,
    },
    {
      id: 'multi-axis-board',
      label: 'One board for all motors',
      means: 'A single board with two to four small plain-stepper drives on it.',
      gains: 'Tidy: a third of the wires.',
      wrong:
        'One fault stops everything. Cheap ones pick up noise and want slow pulses: lost steps that nobody can explain are the sign.',
      skill: 2,
      needs: 'Plain steppers with a 57 mm face, and step timing of 5 µs or more at the control.',
    },
    {
      id: 'built-in-drives',
      label: 'Drives built into the motors',
      means: 'Motor and drive in one piece on the slide; only supply and pulses go there.',
      gains: 'Almost no cabinet, and no long motor leads to make noise.',
      wrong:
        'The electronics live in chips, oil and heat, and cost about 40 % more. Faults that come with warmth and go overnight are the sign.',
      skill: 2,
      needs: 'Sealed connectors.',
    },
  ],
};

const supply: Decision = {
  id: 'motor-supply',
  subsystem: 'motors',
  place: 'guide',
  name: 'Motor supply',
  ask: 'What feeds the motor drives?',
  why: 'Voltage sets how fast a stepper can go, and too much of it kills the drive at once. A braking motor also pushes current back.',
  thumb:
    'Volts: at most 32 times the square root of the winding in millihenry, and at most 0.8 of what the drive stands: 36 to 40 V on a 50 V drive. Amps: two thirds of the phase currents together.',
  findOut:
    'Read two figures: the inductance (mH) on the sheet of the motor and the highest voltage on the drive. Write down both before you order.',
  assume: ['enclosed-supply', 'transformer-supply', 'mains-direct'],
  assumeWhy: 'Until you choose we plan with an enclosed supply of 36 to 40 V, which suits 50 V drives.',
  open: 'options',
  options: [
    {
      id: 'enclosed-supply',
      label: 'Enclosed power supply (switch-mode)',
      means:
        'A ready-made metal box with mains in and steady direct current out: 36 to 40 V for 50 V drives, 60 to 70 V for 80 V ones.',
      gains: 'Cheap, light, one adjusting screw.',
      wrong:
        'It shuts down when a heavy slide brakes and pushes current back. A machine that goes dark at the end of a fast move is the sign.',
      skill: 2,
    },
    {
      id: 'transformer-supply',
      label: 'Transformer, rectifier, capacitor',
      means: 'A ring-shaped transformer with a rectifier and a large capacitor, 45 to 70 V, built by you.',
      gains: 'Rugged: it swallows braking surges.',
      wrong:
        'It rises 10 % with no load and stays charged after switching off, longest with no drive connected. On 50 V drives it is their end.',
      skill: 4,
      needs: 'Mains wiring, a bleed resistor, soft start, and 80 V drives.',
    },
    {
      id: 'mains-direct',
      label: 'Servo drives straight from the mains',
      means: 'No separate supply: each servo drive takes mains through a filter.',
      gains: 'Nothing to buy but the filter, and full speed.',
      wrong:
        'Filters leak to earth and may trip the safety device; inside, dangerous voltage stays for minutes after switching off.',
      skill: 4,
      needs: 'Mains servos, earth bonding that is measured, someone who may do mains wiring.',
    },
  ],
};

export const driveDecisions: readonly Decision[] = [drives, supply];
