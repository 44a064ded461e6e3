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
];
