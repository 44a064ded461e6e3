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
  {
    topic: 'tool-posts',
    ask: 'Does the machine change its tools by itself?',
    section: 'How to choose',
    answer: 'You change by hand when the program asks, and press start again.',
  },
  {
    topic: 'tool-posts',
    ask: 'How does the control know where my tool is?',
    section: 'How to choose',
    answer: 'Turn a bit of bar, measure it, type the diameter.',
  },
  {
    topic: 'tool-posts',
    ask: 'Must I measure every tool again each day?',
    section: 'How to choose',
    answer: 'With a home switch on each slide the offsets outlive the night.',
  },
  {
    topic: 'tool-posts',
    ask: 'How many holders do I need?',
    section: 'How to choose',
    answer: 'Five holders are a beginning',
  },
  {
    topic: 'work-holding',
    ask: 'Do I need collets?',
    section: 'How to choose',
    answer: 'if you make batches of bar under 16 to 25 mm, collets. Else keep the chuck.',
  },
  {
    topic: 'work-holding',
    ask: 'How far may a bar stick out at the back?',
    section: 'How to choose',
    answer: 'unless it is shorter than three diameters or runs in a fixed tube',
  },
  {
    topic: 'work-holding',
    ask: 'What do I do when the bar starts to hum?',
    section: 'What goes wrong, and the early sign',
    answer: 'Stand away to the side and stop. Do not reach for it.',
  },
  {
    topic: 'work-holding',
    ask: 'How fast may my chuck turn?',
    section: 'How to measure',
    answer: 'The lowest of chuck, lathe and work counts',
  },
  {
    topic: 'chips-and-lubrication',
    ask: 'Do I need coolant?',
    section: 'How to choose',
    answer: 'Dry, or oil from a brush, suits most small converted lathes.',
  },
  {
    topic: 'chips-and-lubrication',
    ask: 'How often do I oil it, and with what?',
    section: 'How to choose',
    answer: 'Ball nuts want grease or oil every 20 to 50 hours, ways every session.',
  },
  {
    topic: 'chips-and-lubrication',
    ask: 'How much travel do bellows cost?',
    section: 'How to choose',
    answer: 'On 400 mm of travel that is some 67 mm',
  },
  {
    topic: 'chips-and-lubrication',
    ask: 'May I blow the chips away with air?',
    section: 'Safety',
    answer: 'Never by hand, never with air: it drives them into eyes and slides.',
  },
];
