import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms spindle and wiring. */
export const questions: readonly NewcomerQuestion[] = [
  {
    topic: 'spindle-feedback',
    ask: 'Why must the control know the angle, if it knows the speed?',
    section: 'How to choose',
    answer: 'Between two marks the control has to guess.',
  },
  {
    topic: 'spindle-feedback',
    ask: 'Can I cut both metric and inch threads?',
    section: 'How to choose',
    answer: 'Metric or inch is only a number in the program',
  },
  {
    topic: 'spindle-feedback',
    ask: 'How far from the work does the tool have to start?',
    section: 'How to choose',
    answer: 'Allow two pitches besides the way it needs to gain speed.',
  },
  {
    topic: 'spindle-feedback',
    ask: 'May I take the work out to try it, and cut deeper afterwards?',
    section: 'What goes wrong, and the early sign',
    answer: 'Finish the thread, nut and all, before you loosen the jaws.',
  },
  {
    topic: 'spindle-motor',
    ask: 'Can I put a speed drive on the motor that I have?',
    section: 'How to choose',
    answer: 'a drive for three phases cannot turn a motor made for one',
  },
  {
    topic: 'spindle-motor',
    ask: 'Do I need a three-phase supply in the workshop?',
    section: 'How to choose',
    answer: 'the drive makes the three phases from household power',
  },
  {
    topic: 'spindle-motor',
    ask: 'My motor has enough power. Why does it still stall?',
    section: 'What it decides',
    answer: 'Pull at low speed (torque) fails first.',
  },
  {
    topic: 'spindle-motor',
    ask: 'How fast may I let the chuck turn?',
    section: 'Safety',
    answer: 'The top speed is the lowest of three',
  },
  {
    topic: 'stop-circuit',
    ask: 'Must the guard over the chuck have a switch?',
    section: 'How to choose',
    answer: 'A program can start the spindle while a key is in the chuck.',
  },
  {
    topic: 'stop-circuit',
    ask: 'Would a brake on the spindle not be best?',
    section: 'How to choose',
    answer: 'it belongs only on a spindle whose chuck is bolted, cam-locked or held by a lock',
  },
  {
    topic: 'home-and-limits',
    ask: 'Does it find home quickly or slowly?',
    section: 'How to choose',
    answer: 'Quickly until the switch acts, back off, then slowly again.',
  },
  {
    topic: 'cabinet-and-heat',
    ask: 'Does the cabinet need a fan?',
    section: 'How to choose',
    answer: 'If you want no fan, because of chips, take a larger box.',
  },
  {
    topic: 'cabinet-and-heat',
    ask: 'Will my outlet be enough?',
    section: 'How to choose',
    answer: 'Add up the amps, and stay under 0.8 of the breaker.',
  },
  {
    topic: 'cabinet-and-heat',
    ask: 'The ground-fault device trips. May I take it out?',
    section: 'What goes wrong, and the early sign',
    answer: 'Nobody takes the device out',
  },
  {
    topic: 'cabinet-and-heat',
    ask: 'May I wire the mains myself?',
    section: 'How to choose',
    answer: 'If you cannot explain what the earth wire does and prove that it works, ask somebody who can.',
  },
  {
    topic: 'cable-and-noise',
    ask: 'What is noise?',
    section: 'What it decides',
    answer: "what a drive's hard switching leaves on wires beside it",
  },
  {
    topic: 'cable-and-noise',
    ask: 'Can I use simple wire?',
    section: 'How to choose',
    answer: 'Only with a quiet spindle, and never with servos.',
  },
  {
    topic: 'cable-and-noise',
    ask: 'How thick must the wires be?',
    section: 'How to choose',
    answer: 'A cable must carry a quarter more than the motor',
  },
  {
    topic: 'cable-and-noise',
    ask: 'At which end do I join the screen?',
    section: 'How to choose',
    answer: 'at the drive and at the motor, not twisted into a tail',
  },
];
