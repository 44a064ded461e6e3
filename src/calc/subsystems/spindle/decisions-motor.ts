import { not } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';
import { knobStaysInHand } from './drive.ts';

export const motorDecisions: readonly Decision[] = [
  {
    id: 'spindle-motor',
    subsystem: 'spindle',
    place: 'guide',
    name: 'Spindle motor',
    ask: 'What turns the spindle?',
    why: 'Electronics can lower the speed; they do not raise the pull. Threads and large diameters need pull at low speed.',
    thumb: 'Keep at least two belt positions or the back gear, whatever motor you choose.',
    findOut:
      'Read the plate of the motor: power, volts, phases, speed. Look whether it has a speed knob or only a switch. Measure shaft diameter, shaft height and the holes of the feet, and write down millimetres.',
    assume: [
      'three-phase-drive',
      'keep-single-phase',
      'brushless-kit',
      'keep-speed-knob',
      'doubler-drive',
      'servo-spindle',
    ],
    assumeWhy: 'A three-phase motor on a drive is what most conversions of this size end with.',
    open: 'options',
    options: [
      {
        id: 'keep-single-phase',
        label: 'Keep the motor and belts it has',
        means:
          'You move the belt to change speed, as now. A motor-rated starter with overload and no-volt release lets the program start and stop it.',
        gains: 'Full pull at low speed, little money, no electrical noise.',
        wrong:
          'No speed or reverse from the program. Frequent starts heat the motor and wear its start switch. A small relay would weld shut: a proper starter is in the parts.',
        skill: 2,
      },
      {
        id: 'keep-speed-knob',
        label: 'Keep the speed-knob motor it came with',
        means:
          'The factory direct-current or brushless motor with its own speed board. An isolated adapter lets the control turn the knob.',
        gains: 'Cheap, and already variable.',
        wrong:
          'The knob side of the board can be live at mains. Speed sags by 10 to 30 % under load, which spoils threads that rely on one mark a turn. Boards die.',
        skill: 3,
        needs: 'The board identified and its terminals checked by someone competent.',
      },
      {
        id: 'three-phase-drive',
        label: 'Three-phase motor on a speed drive',
        means:
          'A box (variable-frequency drive) makes three phases from household supply and sets the speed.',
        gains: 'Speed, reverse, braking and overload protection from the program.',
        wrong:
          'Electrical noise on other wires, leakage that trips safety devices, weak and hot below about 15 to 20 Hz, and it can overspeed a chuck if the limit is not set in the drive.',
        skill: 3,
      },
      {
        id: 'doubler-drive',
        label: 'Three-phase motor on a 120 V doubler drive',
        means: 'A drive that runs from 120 V and gives 230 V three-phase, for motors up to about 0.55 kW.',
        gains: 'The same speed control where there is no 230 V outlet.',
        wrong:
          'Draws 16 to 20 A on its plate for 0.75 kW: too much for a shared outlet. Noise and leakage as with any drive.',
        skill: 3,
        needs: 'A 120 V supply, and the plate of the drive read before buying.',
      },
      {
        id: 'brushless-kit',
        label: 'Brushless motor kit',
        means: 'A light motor with its own drive.',
        gains: 'Good pull at low speed for its weight.',
        wrong: 'Quality varies from kit to kit, and the speed signal must be isolated.',
        skill: 3,
      },
      {
        id: 'servo-spindle',
        label: 'Servo spindle',
        means: 'A large mains servo motor that holds its speed and can stop at an angle.',
        gains: 'Speed that does not sag, and a spindle that can be pointed.',
        wrong: 'Dear, noisy on the wires, has to be tuned, and the belt ratio must suit.',
        skill: 4,
      },
    ],
  },
  {
    id: 'speed-command',
    subsystem: 'spindle',
    place: 'guide',
    name: 'Speed command',
    ask: 'How is the spindle speed set?',
    why: 'Speed from the program is pleasant but not needed on the first day.',
    thumb:
      'Start with on and off from the program and a knob. Lay the wires for speed now and use them later.',
    assume: ['speed-by-voltage', 'speed-by-knob', 'speed-by-serial'],
    assumeWhy: 'It is what most drives take without fuss.',
    open: 'options',
    options: [
      {
        id: 'speed-by-knob',
        label: 'By a knob or belt, program only starts and stops',
        means: 'You set the speed by hand.',
        gains: 'Robust, little to go wrong.',
        wrong: 'The program cannot change speed, so facing cuts slow down towards the centre.',
        skill: 2,
      },
      {
        id: 'speed-by-voltage',
        label: 'By an isolated voltage, 0 to 10 V',
        means: 'An isolated output of the control sets the drive; relays set the direction.',
        gains: 'Simple, and most drives have the terminal.',
        wrong: 'Not straight at the bottom end: calibrate at three speeds. A ground loop makes it sag.',
        skill: 3,
      },
      {
        id: 'speed-by-serial',
        label: 'By a serial line to the drive',
        means: 'The control talks to the drive and reads speed, load and faults back.',
        gains: 'Exact speed, and faults in words.',
        wrong: 'Noise drops messages, and register lists take evenings. Keep a hard-wired enable.',
        skill: 4,
      },
    ],
  },
  {
    id: 'reversing',
    subsystem: 'spindle',
    place: 'guide',
    name: 'Reverse and braking',
    ask: 'Should the spindle reverse and brake?',
    why: 'A screwed-on chuck can unscrew when it is stopped hard or reversed.',
    thumb:
      'Stop within about 3 s only where the chuck is locked or bolted on; with a bare screwed nose let it ramp for 5 s or more.',
    findOut: 'Look behind the chuck: a thread, three cams, or bolts.',
    askWhen: not(knobStaysInHand),
    assume: ['forward-and-reverse', 'forward-only'],
    assumeWhy: 'Drives reverse anyway; a screwed nose then needs its lock.',
    open: 'options',
    options: [
      {
        id: 'forward-only',
        label: 'Forward only, a gentle stop',
        means: 'The spindle turns one way and slows on a ramp.',
        gains: 'Safer on a screwed nose, nothing to buy.',
        wrong: 'Slow stops. A hard stop can still loosen a screwed chuck, so it must ramp.',
        skill: 1,
      },
      {
        id: 'forward-and-reverse',
        label: 'Both ways, with a brake resistor',
        means: 'The drive reverses, and a resistor takes the energy of stopping.',
        gains: 'Tapping, and left-hand threads cut away from the chuck.',
        wrong:
          'A screwed chuck comes off unless it is locked. Belts slip. A resistor sized on the mean power burns: the start of the stop has twice that.',
        skill: 2,
      },
    ],
  },
];
