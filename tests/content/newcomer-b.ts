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
];
