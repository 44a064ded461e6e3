import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms motors and control. */
export const questions: readonly NewcomerQuestion[] = [
  {
    topic: 'motor-size',
    ask: 'I have a small lathe and want no sums. Which motors do I take?',
    section: 'How to choose',
    answer: 'As a start, without any sums:',
  },
  {
    topic: 'motor-size',
    ask: 'What is a newton metre?',
    section: 'What it decides',
    answer: 'what a weight of 1 kg gives on an arm of 10 cm',
  },
  {
    topic: 'motor-size',
    ask: 'Why not take the largest, to be safe?',
    section: 'How to choose',
    answer: 'stalls in fast moves that a 57 mm one makes',
  },
  {
    topic: 'motor-size',
    ask: 'How do I know how hard my slides are to move?',
    section: 'How to measure',
    answer: 'Hook a spring scale to the slide and pull slowly until it creeps',
  },
  {
    topic: 'motor-supply',
    ask: 'Do more volts make the motor stronger?',
    section: 'What it decides',
    answer: 'It does not make a slow motor stronger.',
  },
  {
    topic: 'motor-supply',
    ask: 'My drive says 50 V. May I feed it with 48?',
    section: 'How to choose',
    answer: 'a drive marked 50 V gets 36 to 40 V, never 48',
  },
  {
    topic: 'motor-supply',
    ask: 'How many watts must the supply have?',
    section: 'How to choose',
    answer: 'Add up the phase currents of all motors and take two thirds.',
  },
  {
    topic: 'motor-supply',
    ask: 'How long must I wait after switching off?',
    section: 'How to measure',
    answer: 'wait the longest time on any label, then measure',
  },
  {
    topic: 'open-closed-servo',
    ask: 'Which kind do I take if I cannot decide?',
    section: 'How to choose',
    answer: 'closed-loop steppers for a first conversion',
  },
  {
    topic: 'open-closed-servo',
    ask: 'Does a closed loop know where the tool is?',
    section: 'What goes wrong, and the early sign',
    answer: 'It sees only its own motor.',
  },
  {
    topic: 'open-closed-servo',
    ask: 'Do finer microsteps make the lathe more accurate?',
    section: 'How to choose',
    answer: 'They hardly make it truer.',
  },
  {
    topic: 'open-closed-servo',
    ask: 'The motor is too hot to hold. Is it broken?',
    section: 'What goes wrong, and the early sign',
    answer: '60 °C on the case is too hot to hold, and still ordinary',
  },
  {
    topic: 'kinds-of-control',
    ask: 'What do I have to ask before I buy a control?',
    section: 'How to choose',
    answer: 'Ask each candidate six questions',
  },
  {
    topic: 'kinds-of-control',
    ask: 'Can I use one control for my lathe and my mill?',
    section: 'How to choose',
    answer: 'It pays where both have motors of one kind and voltage',
  },
  {
    topic: 'kinds-of-control',
    ask: 'Is my old PC good enough?',
    section: 'How to measure',
    answer: 'Run its own test for 12 hours with the graphics and the network busy.',
  },
  {
    topic: 'kinds-of-control',
    ask: 'I only want threads without change gears. Do I need all this?',
    section: 'How to choose',
    answer: 'For threads and power feed it may be all you want.',
  },
  {
    topic: 'making-programs',
    ask: 'What does a program look like?',
    section: 'What it decides',
    answer: 'These four take one cut along a bar:',
  },
  {
    topic: 'making-programs',
    ask: 'Do I have to draw every part on a computer?',
    section: 'How to choose',
    answer: 'forms and a few typed lines do about 16 of 20 jobs',
  },
  {
    topic: 'making-programs',
    ask: 'How long does a program take me?',
    section: 'How to measure',
    answer: 'Typical is one to three hours at first',
  },
  {
    topic: 'making-programs',
    ask: 'How does it know how long my tools are?',
    section: 'How to choose',
    answer: 'You touch each tool on a known face and diameter once',
  },
  {
    topic: 'operator-panel',
    ask: 'What is the difference between hold and the red button?',
    section: 'What it decides',
    answer: 'The red button cuts power by wire, whatever the control thinks.',
  },
  {
    topic: 'operator-panel',
    ask: 'Is a keyboard enough to begin with?',
    section: 'How to choose',
    answer: 'Acceptable for the first month, with a hold button from the first day.',
  },
  {
    topic: 'operator-panel',
    ask: 'Can I still turn by hand?',
    section: 'How to choose',
    answer: 'you turn by hand, the motors follow, and the limits still hold',
  },
  {
    topic: 'operator-panel',
    ask: 'Where do I put the buttons?',
    section: 'How to choose',
    answer: 'At your right hand when you face the chuck',
  },
];
