import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms tooling and, of wiring, chips and lubrication. */
export const questions: readonly NewcomerQuestion[] = [
  {
    topic: 'drilling',
    ask: 'How large a drill can the carriage push?',
    section: 'How to choose',
    answer: 'this carriage drills about 7 mm from solid with the first and 8 mm with the second',
  },
  {
    topic: 'drilling',
    ask: 'Can I go on drilling from the tailstock as I do now?',
    section: 'What it decides',
    answer: 'You can go on drilling by hand from the tailstock while the program waits.',
  },
  {
    topic: 'drilling',
    ask: 'How would a motor drive the tailstock?',
    section: 'How to choose',
    answer: 'A third motor, with a toothed belt, turns the screw that moves the quill',
  },
  {
    topic: 'drilling',
    ask: 'What do I do when it stops with the drill in the hole?',
    section: 'Safety',
    answer: 'first bring the drill straight out along the bed',
  },
];
