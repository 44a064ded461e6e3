import type { Unit } from './core/quantity.ts';
import type { Fact, Show } from './facts.ts';

const mm = (value: number): number => value / 1000;
const rpm = (value: number): number => value / 60;

type Words = Pick<Fact, 'name' | 'means' | 'howToMeasure'>;

const own = (id: string, unit: Unit, show: Show, sense: Fact['sense'], words: Words): Fact => ({
  id,
  group: 'own',
  unit,
  show,
  sense,
  ...words,
});

const length = (id: string, sense: Fact['sense'], words: Words): Fact => own(id, 'm', 'length', sense, words);
const speed = (id: string, words: Words): Fact => own(id, 'rev/s', 'speed', [rpm(30), rpm(10000)], words);
const count = (id: string, sense: Fact['sense'], words: Words): Fact => own(id, '1', 'count', sense, words);

const ofWork = (id: string, sense: Fact['sense'], typical: Fact['typical'], words: Words): Fact => ({
  id,
  group: 'work',
  unit: 'm',
  show: 'length',
  sense,
  ...(typical ? { typical } : {}),
  ...words,
});

/** More of what the machine shall do. Typical figures are common practice for lathes of these sizes; no source. */
const work: readonly Fact[] = [
  ofWork(
    'thread-length',
    [mm(2), mm(1500)],
    { small: mm(15), medium: mm(25), large: mm(40) },
    {
      name: 'Length of a thread',
      means: 'How long an ordinary thread is, from its start to its last full turn.',
      howToMeasure: 'Take it from a drawing, or measure a thread that you often cut.',
    },
  ),
  ofWork(
    'thread-relief',
    [mm(0.5), mm(100)],
    { small: mm(4), medium: mm(5), large: mm(8) },
    {
      name: 'Room behind a thread',
      means: 'The groove or free end in which the tool may stop after the last turn (relief).',
      howToMeasure: 'Measure the groove behind the thread, or the way to the shoulder.',
    },
  ),
  ofWork(
    'smallest-diameter',
    [mm(0.5), mm(100)],
    { small: mm(3), medium: mm(5), large: mm(8) },
    {
      name: 'Smallest diameter you turn',
      means: 'The thinnest place of an ordinary part. Small diameters show a tool that is off centre height.',
      howToMeasure: 'Look through your drawings for the thinnest spigot.',
    },
  ),
];

const drive: readonly Fact[] = [
  own('surface-speed', 'm/s', 'surface-speed', [rpm(5), rpm(500)], {
    name: 'Cutting speed you use',
    means: 'How fast the work passes the tool (surface speed).',
    howToMeasure: 'π × diameter × turns a minute, while it cuts well; or the box of the inserts.',
  }),
  speed('spindle-motor-speed', {
    name: 'Speed on the plate of the spindle motor',
    means: 'What the motor turns at its rated power, before any belt.',
    howToMeasure: 'Read the plate of the motor that will turn the spindle.',
  }),
  own('belt-ratio-slow', '1', 'ratio', [0.2, 30], {
    name: 'Ratio of the slow belt position',
    means: 'Turns of the motor for one turn of the spindle, in the slowest position that stays.',
    howToMeasure: 'Unplug the lathe. Turn the chuck ten turns by hand and count the turns of the motor.',
  }),
  own('belt-ratio-fast', '1', 'ratio', [0.2, 30], {
    name: 'Ratio of the fast belt position',
    means: 'The same in the fastest position.',
    howToMeasure: 'Unplug the lathe. Turn the chuck ten turns by hand and count the turns of the motor.',
  }),
  own('spindle-sag', '1', 'share', [0, 0.5], {
    name: 'How much the spindle slows in a thread',
    means: 'The share of its speed that it loses in an ordinary threading pass (sag).',
    howToMeasure:
      'Tachometer on the chuck, guard in place: speed in air less speed in the cut, over speed in air.',
  }),
  length('spindle-end-room', [0, mm(400)], {
    name: 'Free spindle behind the headstock',
    means: 'The length around the back end of the spindle that nothing else needs.',
    howToMeasure: 'Rule from the last nut or gear to the end of the spindle, with the cover shut.',
  }),
  count('encoder-lines', [1, 20000], {
    name: 'Lines of the spindle sensor you buy',
    means: 'Marks or lines in one turn; pulses a turn on one wire, before the control counts all edges.',
    howToMeasure: 'Read its label or data sheet.',
  }),
  speed('top-speed-wanted', {
    name: 'Top speed you mean to set in the drive',
    means: 'The limit you will type into the drive, in turns of the spindle in the fastest belt position.',
    howToMeasure: 'Choose it. It may never pass the mark on the chuck or the lathe’s own top speed.',
  }),
  speed('work-safe-speed', {
    name: 'Speed that your work can stand',
    means: 'The most for parts that are off balance, long, thin, or held on a faceplate or in a collet.',
    howToMeasure:
      'Read the mark on collet chuck or faceplate; go up slowly behind the guard until it shakes.',
  }),
  speed('program-speed-clamp', {
    name: 'Speed limit written in your programs',
    means: 'The highest speed that a program lets the control ask for, however small the diameter gets.',
    howToMeasure: 'Look for the limit near the top of every program and write down the highest.',
  }),
];

const stopping: readonly Fact[] = [
  own('chuck-mass', 'kg', 'mass', [0.3, 120], {
    name: 'Mass of the largest chuck',
    means: 'It decides how much energy a stop has to take out.',
    howToMeasure: 'Kitchen or bathroom scales, chuck off the spindle.',
  }),
  own('brake-resistor-ohms', 'ohm', 'resistance', [2, 2000], {
    name: 'Ohms of the brake resistor',
    means: 'Its resistance.',
    howToMeasure: 'Read it on the resistor, or measure it with the drive unplugged and proved dead.',
  }),
  own('brake-resistor-watts', 'W', 'power', [10, 10000], {
    name: 'Watts of the brake resistor',
    means: 'What it stands for hours. For a few seconds it stands several times that.',
    howToMeasure: 'Read it on the resistor.',
  }),
  own('drive-smallest-ohms', 'ohm', 'resistance', [2, 1000], {
    name: 'Smallest brake resistor of the drive',
    means: 'Fewer ohms than this destroy the brake switch inside the drive.',
    howToMeasure: 'Manual of the drive, under braking resistor: the minimum resistance.',
  }),
  length('motor-shaft-height', [mm(30), mm(250)], {
    name: 'Shaft height of the new spindle motor',
    means: 'From the underside of its feet to the middle of its shaft.',
    howToMeasure: 'Drawing of the motor, or a rule. Note feet holes, shaft diameter and key as well.',
  }),
  length('motor-shaft-room', [mm(30), mm(400)], {
    name: 'Shaft height that the stand takes',
    means: 'From the motor plate of the lathe to the line of the belt, at the belt’s longest.',
    howToMeasure: 'Belt slack, old motor out: from the plate up to the middle of the belt line.',
  }),
];

const tools: readonly Fact[] = [
  length('bar-overhang', [0, mm(4000)], {
    name: 'Bar behind the headstock',
    means: 'How far the longest bar sticks out of the back of the spindle with nothing around it.',
    howToMeasure:
      'Tape measure from the end of the spindle, or from the end of its tube, to the end of the bar.',
  }),
  length('bar-diameter', [mm(2), mm(110)], {
    name: 'Thinnest bar through the spindle',
    means: 'Thin bar bends first.',
    howToMeasure: 'Calipers on the bar.',
  }),
  length('tool-height-offset', [0, mm(2)], {
    name: 'Tool off centre height',
    means: 'How far the tip stands above or below the middle of the spindle.',
    howToMeasure: 'Face a bar to the middle: half the diameter of the pip that stays is the error.',
  }),
  length('carriage-home-spread', [0, mm(2)], {
    name: 'Spread of homing, carriage',
    means: 'How far the home position of the carriage wanders.',
    howToMeasure: 'Indicator against the carriage; home ten times; largest reading less the smallest.',
  }),
  length('cross-home-spread', [0, mm(2)], {
    name: 'Spread of homing, cross slide',
    means: 'How far the home position of the cross slide wanders. The diameter shows twice that.',
    howToMeasure: 'Indicator against the slide; home ten times; largest reading less the smallest.',
  }),
  length('reach-past-centre', [0, mm(80)], {
    name: 'Reach past the centre',
    means: 'How far the shortest tool goes beyond the middle of the spindle.',
    howToMeasure:
      'Centre in the spindle, shortest tool in the post, slide wound fully in: measure tip to point.',
  }),
  count('gang-tools-wanted', [1, 8], {
    name: 'Tools side by side',
    means: 'How many tools shall stand in a row on the slide.',
    howToMeasure: 'Count the tools that one ordinary part needs.',
  }),
];

const proofs: readonly Fact[] = [
  count('stop-rows-proved', [0, 20], {
    name: 'Rows of the stop table proved',
    means: 'How many cases of the stop table did on the machine what the table says.',
    howToMeasure: 'Work down the printed stop table, chuck off, and count the rows with four ticks.',
  }),
  own('control-output-volts', 'V', 'voltage', [1, 60], {
    name: 'Signal voltage of the control',
    means: 'What its step, direction and enable outputs give when they are on.',
    howToMeasure: 'Manual of the control or breakout board, under outputs; measure one with a meter.',
  }),
  own('drive-input-volts', 'V', 'voltage', [1, 60], {
    name: 'Signal voltage that the drive wants',
    means: 'What its step, direction and enable inputs are made for, as its switch is set.',
    howToMeasure: 'Data sheet of the drive, and the little switch beside its signal plug if it has one.',
  }),
];

/** Figures for spindle, threads, tools and control. Nothing is assumed for the owner's own ones. */
export const turningFacts: readonly Fact[] = [...work, ...drive, ...stopping, ...tools, ...proofs];
