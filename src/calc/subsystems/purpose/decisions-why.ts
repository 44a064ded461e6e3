import type { Decision } from '../../core/decision.ts';

const purpose: Decision = {
  id: 'purpose',
  subsystem: 'purpose',
  place: 'guide',
  name: 'What it should make',
  ask: 'What should it make that it cannot make well now?',
  why: 'It decides whether a conversion is worth anything, and whether threads, holes and speed matter.',
  thumb:
    'Count the last 20 jobs. With fewer than about 5 a year that repeat, curve, taper or carry threads, a readout or a thread synchroniser pays better than a full conversion.',
  findOut:
    'Go through the last 20 parts you made. For each write one line: how many, what material, which thread, how long it took.',
  many: true,
  assume: ['repeat-batches', 'thread-cutting', 'profiles', 'learning', 'one-off-repairs'],
  assumeWhy: 'Small batches of the same part are the usual reason for a conversion.',
  open: 'assumed',
  options: [
    {
      id: 'one-off-repairs',
      label: 'Mostly single parts and repairs',
      means: 'A bush today, a shaft next week, never the same twice.',
      gains: 'You learn early that other things may help you more: stops, a readout, a power feed.',
      wrong: 'Setting up the program takes longer than turning the part by hand.',
      skill: 1,
    },
    {
      id: 'repeat-batches',
      label: 'Small batches of the same part',
      means: 'Five to two hundred pieces to one drawing, again and again.',
      gains:
        'The best return: each piece after the first costs minutes. Tools must come back to their place.',
      wrong: 'Holes drilled by hand from the tailstock become the slowest step.',
      skill: 2,
    },
    {
      id: 'profiles',
      label: 'Curves, balls, tapers',
      means: 'Shapes where both slides move together along a line that is not straight.',
      gains: 'What handwheels cannot do.',
      wrong:
        'Where the cross slide turns back in mid-curve, its play is printed on the work: it must be under 0.02 mm.',
      skill: 2,
    },
    {
      id: 'thread-cutting',
      label: 'Threads of any pitch',
      means: 'Metric and inch threads without changing gears.',
      gains: 'Any pitch from a key press.',
      wrong:
        'Only the carriage has to follow the spindle: for threads alone a full conversion is more than you need.',
      skill: 2,
    },
    {
      id: 'learning',
      label: 'To learn; the build is the hobby',
      means: 'You want to have built it, and the hours are the fun.',
      gains: 'Hours are not a cost, so the sum looks different.',
      wrong: 'Without an early day of first chips the project fades out.',
      skill: 1,
    },
  ],
};

const threadKinds: Decision = {
  id: 'thread-kinds',
  subsystem: 'purpose',
  place: 'guide',
  name: 'Threads to cut',
  ask: 'Which threads will you cut on it?',
  why: 'Threads ask for a sensor on the spindle, and some kinds ask for a better one.',
  thumb: 'If you cut threads with taps and dies and are content, tick no threads.',
  many: true,
  assume: [
    'metric-threads',
    'inch-threads',
    'internal-threads',
    'left-hand-threads',
    'multi-start-threads',
    'no-threads',
  ],
  assumeWhy:
    'Sooner or later most people cut a metric thread, and the sensor also makes feed per turn possible.',
  open: 'assumed',
  options: [
    {
      id: 'no-threads',
      label: 'None',
      means: 'Taps and dies do for you.',
      gains: 'The spindle may go without a sensor.',
      wrong: 'Feed per turn and constant cutting speed go with it.',
      skill: 1,
    },
    {
      id: 'metric-threads',
      label: 'Metric',
      means: 'Pitch in millimetres.',
      gains: 'No change gears.',
      wrong: 'A sagging spindle and a single mark a turn give a thread that drifts.',
      skill: 2,
    },
    {
      id: 'inch-threads',
      label: 'Inch',
      means: 'Pitch in threads per inch.',
      gains: 'The ratio of 127 is held exactly in the numbers, not by a gear.',
      wrong: 'A control that rounds the ratio gives a thread that creeps over its length.',
      skill: 2,
    },
    {
      id: 'left-hand-threads',
      label: 'Left-hand',
      means: 'Cut from the headstock outward, or with the spindle reversed.',
      gains: 'Only a sign in the program.',
      wrong: 'The tool starts beside the shoulder, so it needs a groove to start in.',
      skill: 3,
    },
    {
      id: 'internal-threads',
      label: 'Inside a hole',
      means: 'Cut with a bar in a bore.',
      gains: 'Threads too large or too odd for a tap.',
      wrong:
        'The bar must come out of the hole before the cross slide moves: homing or jogging across breaks it.',
      skill: 3,
    },
    {
      id: 'multi-start-threads',
      label: 'Several starts',
      means: 'Two or more threads side by side, for quick closures.',
      gains: 'Each start is the same pass, moved along by one pitch.',
      wrong: 'With one mark a turn you cannot trust the starts to fall evenly.',
      skill: 4,
    },
  ],
};

const whichLathe: Decision = {
  id: 'which-lathe',
  subsystem: 'purpose',
  place: 'guide',
  name: 'Which lathe',
  ask: 'Which lathe will be converted?',
  why: 'Taking apart your only lathe takes away the tool that makes the parts for it. We then plan what has to be made first.',
  thumb:
    'Do not begin to strip your only lathe before every turned and bored part, and a spare of each, is on the shelf.',
  assume: ['only-lathe', 'spare-lathe', 'buy-a-donor', 'dead-training-machine'],
  assumeWhy: 'Planning for an only lathe is the careful way.',
  open: 'assumed',
  options: [
    {
      id: 'only-lathe',
      label: 'The only lathe I have',
      means: 'There is no other lathe within reach.',
      gains: 'Nothing to buy and nowhere to find room for.',
      wrong:
        'A part is missing half way and there is nothing to make it on; the lathe is away for two to nine months.',
      skill: 3,
      needs: 'All turning for the conversion done first.',
    },
    {
      id: 'spare-lathe',
      label: 'A second lathe; the other stays manual',
      means: 'One lathe keeps working by hand while the other is apart.',
      gains: 'Parts can be made, or mended, on any day: 10 to 30 hours saved.',
      wrong: 'It takes the room of two machines.',
      skill: 2,
    },
    {
      id: 'buy-a-donor',
      label: 'Buy a cheap used lathe for it',
      means: 'A plain manual lathe bought to be converted; its price stands in the plan.',
      gains: 'You can choose one with a wide flat cross slide, and pay for no gearbox you would take out.',
      wrong:
        'Hidden wear that only shows once it is clean. Transport, cleaning and making good take 6 to 30 hours.',
      skill: 3,
      needs: 'Transport, room, and the survey done before paying.',
    },
    {
      id: 'dead-training-machine',
      label: 'Buy a small training CNC lathe, electronics dead',
      means:
        'A school machine with ball screws, motor mounts and guards in place; its price stands in the plan.',
      gains: 'Most of the mechanical half is there already, and stiffer than you would make it.',
      wrong: 'Odd motors and encoders without papers, and often a small headstock.',
      skill: 3,
      needs: 'Transport and electrical work.',
    },
  ],
};

export const whyDecisions: readonly Decision[] = [purpose, threadKinds, whichLathe];
