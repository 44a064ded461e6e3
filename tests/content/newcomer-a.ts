import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms purpose, approach, carriage and cross-slide. */
export const questions: readonly NewcomerQuestion[] = [
  {
    topic: 'who-should-not-convert',
    ask: 'Can I leave it working and do something else?',
    section: 'What it decides',
    answer: 'It does not work by itself: you stand beside it.',
  },
  {
    topic: 'who-should-not-convert',
    ask: 'Must I know how to write programs before I start?',
    section: 'How to choose',
    answer: 'Programs themselves you can learn afterwards',
  },
  {
    topic: 'who-should-not-convert',
    ask: 'How long shall I be without my lathe?',
    section: 'What it decides',
    answer: 'For 12 to 22 weeks of it the lathe stands in pieces.',
  },
  {
    topic: 'who-should-not-convert',
    ask: 'Will it earn its money back?',
    section: 'What it decides',
    answer: 'In money, seldom.',
  },
  {
    topic: 'daily-use',
    ask: 'How long is it before I can cut the first chip of the day?',
    section: 'How to choose',
    answer: 'five to ten minutes before the first chip',
  },
  {
    topic: 'daily-use',
    ask: 'Can I go away while it makes twenty pieces?',
    section: 'How to choose',
    answer: 'You are not free to leave',
  },
  {
    topic: 'daily-use',
    ask: 'How soon do I get the first piece of a part I have made before?',
    section: 'How to choose',
    answer: 'Count on a quarter to half an hour before the second piece.',
  },
  {
    topic: 'daily-use',
    ask: 'What does homing mean, and why do it each day?',
    section: 'How to choose',
    answer: 'send each slide to its switch, so that the control knows where it stands',
  },
];
