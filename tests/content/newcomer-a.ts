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
  {
    topic: 'making-the-brackets',
    ask: 'I have no mill. Can I make the brackets at all?',
    section: 'How to choose',
    answer: 'With a drill press beside it you can make every bracket',
  },
  {
    topic: 'making-the-brackets',
    ask: 'What is a register?',
    section: 'How to choose',
    answer: "a bore that the round step on the motor's face drops into",
  },
  {
    topic: 'making-the-brackets',
    ask: 'How do I know that a bracket is stiff enough?',
    section: 'How to measure',
    answer: 'It should move less than 0.02 mm.',
  },
  {
    topic: 'making-the-brackets',
    ask: 'When may I take the lathe apart?',
    section: 'How to choose',
    answer: 'Everything must exist before the lathe comes apart',
  },
  {
    topic: 'buying-and-lead-times',
    ask: 'What do I order first?',
    section: 'How to choose',
    answer: 'The first round is what takes weeks',
  },
  {
    topic: 'buying-and-lead-times',
    ask: 'Why is what I pay so much more than the price in the shop?',
    section: 'How to choose',
    answer: 'what a thing costs when it is on your bench: price, freight, tax and duty',
  },
  {
    topic: 'buying-and-lead-times',
    ask: 'Can I buy everything used and save half?',
    section: 'How to choose',
    answer: '10 to 60 hours of hunting and testing',
  },
  {
    topic: 'buying-and-lead-times',
    ask: 'What do I do when a parcel arrives?',
    section: 'How to measure',
    answer: 'On arrival, the same day.',
  },
  {
    topic: 'commissioning-and-proof',
    ask: 'What is play, and does the control not simply correct it?',
    section: 'How to choose',
    answer: 'It does not stop a cut from pulling the slide through its play.',
  },
  {
    topic: 'commissioning-and-proof',
    ask: 'How fast may I let it move?',
    section: 'How to choose',
    answer: 'Keep 60 to 70 % of it.',
  },
  {
    topic: 'commissioning-and-proof',
    ask: 'How do I know that it is finished?',
    section: 'How to measure',
    answer: 'Ten equal diameters.',
  },
  {
    topic: 'commissioning-and-proof',
    ask: 'Is a stop button on the screen enough?',
    section: 'How to choose',
    answer: 'A stop that needs the control to work is not finished.',
  },
];
