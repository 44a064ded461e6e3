import type { Word } from './word.ts';

export const using: readonly Word[] = [
  { word: 'air cut', means: 'Running a program with no work in the chuck, to see where the tool goes.' },
  {
    word: 'axis',
    linked: ['axis', 'axes'],
    means:
      'A direction in which the control can move something. A plain lathe has two: X across and Z along.',
  },
  {
    word: 'bar puller',
    kept: 'A part of the room of tools.',
    means: 'A gripper in the tool post that pulls the bar out for the next part.',
  },
  { word: 'boring', linked: ['boring'], means: 'Turning the inside of a hole to size.' },
  { word: 'chip breaker', means: 'The shape on top of an insert that curls a chip until it snaps.' },
  { word: 'chisel edge', also: ['web'], means: 'The blunt middle of a drill. It pushes more than it cuts.' },
  { word: 'collet', means: 'A split sleeve that grips round stock evenly and quickly.' },
  {
    word: 'commissioning',
    linked: ['commissioning'],
    means: 'Bringing a finished machine to life step by step, and proving each step.',
  },
  {
    word: 'constant surface speed',
    linked: ['constant surface speed', 'surface speed'],
    means:
      'The control turns the spindle faster as the diameter gets smaller, so that the tool meets the metal at one speed.',
  },
  { word: 'cycle start', means: 'The button that starts a program.' },
  {
    word: 'dead stop',
    kept: 'A part of the room of tools.',
    means: 'A fixed stop inside the spindle that every blank is pushed against.',
  },
  {
    word: 'diameter mode',
    means:
      'X is written as a diameter: X10 makes a part 10 mm across, and the slide stands 5 mm from the axis.',
  },
  {
    word: 'drawing program',
    also: ['CAM'],
    linked: ['CAM'],
    means: 'A program that makes tool paths from a drawing.',
  },
  {
    word: 'feed',
    also: ['feed per revolution'],
    linked: [
      'feed per revolution',
      'feed by the turn',
      'power feed',
      'hand feed',
      'at a (feed)',
      'the (feed)',
      'slow (feed)',
      '(feed) rate',
    ],
    means: 'How far the tool moves for one turn of the work.',
  },
  {
    word: 'feed hold',
    means: 'A button that stops the slides and leaves the spindle turning. It is not a stop.',
  },
  {
    word: 'gang tools',
    linked: ['gang tools', 'gang tool'],
    means: 'Several tools bolted in a row on the cross slide. Moving the slide changes the tool.',
  },
  {
    word: 'insert',
    means: 'A small, hard cutting tip that is held by a screw and thrown away when it is blunt.',
  },
  {
    word: 'jog',
    linked: ['jog', 'jogging', 'jogged'],
    means: 'Moving a slide by a key or a small wheel, without a program.',
  },
  {
    word: 'machine card',
    means: 'A card that hangs on the lathe: largest drill, top speed of each chuck, dates of tests.',
  },
  { word: 'nose radius', means: 'How round the tip of a tool is. It matters on tapers and curves.' },
  {
    word: 'parting',
    also: ['cutting off'],
    means: 'Cutting the finished part from the bar with a narrow blade.',
  },
  {
    word: 'pecking',
    linked: ['peck', 'pecks', 'pecking'],
    means: 'Drilling in short strokes, pulling the drill out between them to clear the chips.',
  },
  {
    word: 'pilot hole',
    also: ['pilot'],
    means: 'A small hole drilled first. It takes away much of the push of the large drill.',
  },
  { word: 'pitch', means: 'The distance from one thread, or tooth, to the next.' },
  { word: 'riser', means: 'A plain block under the tool post, in the place of the compound slide.' },
  { word: 'run-out', means: 'How much something that should run true wobbles.' },
  {
    word: 'run-up',
    kept: 'Said by the working figure of a thread.',
    means: 'The way that a slide needs to come to speed before a thread begins.',
  },
  {
    word: 'soak test',
    also: ['soak'],
    linked: ['soak test', 'the (soak)'],
    means: 'Letting everything run for hours with nothing in the chuck, to find what fails when warm.',
  },
  { word: 'soft jaws', means: 'Chuck jaws that you turn to size yourself, so that they grip a part truly.' },
  { word: 'split point', means: 'A drill ground so that its middle cuts too. It needs less push.' },
  { word: 'swarf', also: ['chips'], means: 'What is cut off. British: swarf. American: chips.' },
  {
    word: 'tool offset',
    means: 'Where the tip of one tool lies, compared with the first one.',
  },
  {
    word: 'tool post',
    means: 'Holds the tool on the slide. A quick-change post takes holders that keep their height.',
  },
  {
    word: 'translator',
    also: ['post-processor'],
    means: 'Turns tool paths into a program that your control can read.',
  },
  { word: 'turret', means: 'A head with several tools that turns the next one into place.' },
  {
    word: 'two-collar test',
    linked: ['two-collar test', 'two collars'],
    means: 'A fine cut on two collars of one bar, to see whether the lathe turns a taper.',
  },
  { word: 'way oil', means: 'A clinging oil for slides. Thin oil runs off, and the slide jerks.' },
];
