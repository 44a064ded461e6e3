import type { Decision, Option } from '../../core/decision.ts';

const options: readonly Option[] = [
  {
    id: 'parallel-port-pc',
    label: 'PC that does the timing, one printer port',
    means:
      'An older PC makes every step pulse itself and sends it out through its printer port (parallel port) and a buffer board.',
    gains: 'The cheapest control that reads the spindle all through a thread.',
    wrong:
      'It gives 10 to 25 thousand pulses a second, five inputs, and an encoder of 100 to 200 lines at most. A PC that hiccups shows as a thump and a lost position.',
    skill: 4,
    needs: 'A PC that passes a night of timing test, and text settings files.',
  },
  {
    id: 'two-parallel-ports-pc',
    label: 'The same PC with two printer ports',
    means: 'A second port card and a second buffer board, which double the inputs.',
    gains: 'Room for a handwheel, home switches and an encoder together.',
    wrong:
      'Timing and pulse limits stay as they are. Two ports that disagree about their address show as a dead board.',
    skill: 4,
    needs: 'As with one port, and a free card slot.',
  },
  {
    id: 'motion-card-pc',
    label: 'PC with a card that does the timing',
    means:
      'A PC decides the moves in real time; a motion card on its network socket or slot makes the pulses and counts the encoder.',
    gains: 'Any encoder, many inputs, handwheels, and threads that follow the spindle truly.',
    wrong:
      'A network chip that pauses makes the machine stop at random. The cards go out of stock for months: order first.',
    skill: 4,
    needs: 'A network port of its own, a night of timing test, and text settings files.',
  },
  {
    id: 'desktop-with-controller',
    label: 'PC with a separate box for the timing',
    means: 'A control program on an ordinary desktop computer talks to an external motion controller.',
    gains: 'Familiar screens with helpers to set up, and many people to ask.',
    wrong:
      'Many such boxes read one mark a turn while threading, so the pitch wanders when the spindle sags. It shows as a nut that binds after ten turns.',
    skill: 3,
    needs: 'The manual of the box read for threading before you pay.',
  },
  {
    id: 'standalone-control',
    label: 'Ready-made lathe control with its own panel',
    means: 'One closed unit with screen, keys, threading and encoder input, and 24 V inputs and outputs.',
    gains: 'No PC; it starts in seconds, and its panel is the operator panel.',
    wrong:
      'What it cannot do it will never do. Fixed encoder lines, few inputs and a poor translation show when you need them; read the manual first.',
    skill: 2,
    needs: 'An encoder with the line count that the manual names.',
  },
  {
    id: 'small-board',
    label: 'Small motion board fed over USB',
    means: 'A palm-sized board runs the moves; a program on a computer or tablet sends them line by line.',
    gains: 'Very cheap.',
    wrong:
      'Many lack threading, diameter mode or tool offsets. A screen saver or a loose USB plug in mid-cut stops the program, not the spindle.',
    skill: 3,
    needs: 'Loading firmware, and its list of features read for the spindle first.',
  },
  {
    id: 'thread-synchroniser',
    label: 'Box that gears carriage to spindle (thread synchroniser)',
    means:
      'A small unit reads the spindle and drives the carriage, and the cross slide if you wish, in step: electronic change gears.',
    gains: 'Hand work stays; any thread, feeds, tapers and stops, with no programs to write.',
    wrong:
      'It makes no free profiles and keeps no tool table. A half-nut opened in mid-thread loses the start, which shows as a crossed thread.',
    skill: 2,
    needs: 'A sensor that counts the spindle in steps, not one mark a turn.',
  },
];

export const controlDecision: Decision = {
  id: 'control',
  subsystem: 'control',
  place: 'guide',
  name: 'Control',
  ask: 'What kind of control?',
  why: 'It decides whether threads come out, how many switches and wheels you can connect, and how long you set up.',
  thumb:
    'Start from threading: does it read where the spindle is while cutting, not just how fast it turns, and can it count as fast as your encoder sends?',
  findOut:
    'For a PC you already have: run its timing test for 12 hours with graphics and network busy. Write down the worst figure. For anything bought: find the page on threading in its manual.',
  assume: [
    'motion-card-pc',
    'standalone-control',
    'desktop-with-controller',
    'two-parallel-ports-pc',
    'parallel-port-pc',
    'small-board',
    'thread-synchroniser',
  ],
  assumeWhy: 'Until you choose we plan with a PC and a motion card, which works with every spindle sensor.',
  open: 'options',
  options,
};
