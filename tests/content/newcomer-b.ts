import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms tooling, motors, control, spindle and wiring. */
export const questions: readonly NewcomerQuestion[] = [
  {
    topic: 'stop-circuit',
    ask: 'Is a stop button that tells the computer not enough?',
    section: 'What it decides',
    answer: 'A circuit that depends on software is never called complete.',
  },
  {
    topic: 'stop-circuit',
    ask: 'How do I try the stop without hurting myself?',
    section: 'How to measure',
    answer: 'lamps in place of motors',
  },
  {
    topic: 'stop-circuit',
    ask: 'May I do the mains wiring myself?',
    section: 'Safety',
    answer: 'a licensed electrician where your rules say so',
  },
  {
    topic: 'home-and-limits',
    ask: 'Why must the machine find home at all?',
    section: 'What it decides',
    answer: 'A stepper wakes up without knowing where it is.',
  },
  {
    topic: 'home-and-limits',
    ask: 'Do I need switches at both ends of every slide?',
    section: 'How to choose',
    answer: 'Home switches only',
  },
  {
    topic: 'home-and-limits',
    ask: 'Can I use a limit switch as my emergency stop?',
    section: 'Safety',
    answer: 'A limit switch is not an emergency stop.',
  },
];
