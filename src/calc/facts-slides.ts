import type { Unit } from './core/quantity.ts';
import type { Fact, Show } from './facts.ts';

const mm = (value: number): number => value / 1000;
const lengths = (small: number, medium: number, large: number) => ({
  small: mm(small),
  medium: mm(medium),
  large: mm(large),
});

type Words = Pick<Fact, 'name' | 'means' | 'howToMeasure'>;

const own = (id: string, unit: Unit, show: Show, sense: Fact['sense'], words: Words): Fact => ({
  id,
  group: 'own',
  unit,
  show,
  sense,
  ...words,
});

const caliper = 'Caliper or micrometer, to a hundredth of a millimetre, on the very part that came.';
const bore = 'Pin gauges, or a caliper across the bore in two directions; take the smaller reading.';

/** The four fits between motor, pulleys or coupling, and screw. */
const fitsOf = (slide: 'carriage' | 'cross', words: string): Fact[] => [
  own(`${slide}-motor-shaft`, 'm', 'length', [mm(3), mm(30)], {
    name: `Shaft of the ${words} motor`,
    means: 'Diameter of the motor shaft. Inch and metric shafts look alike: 6.35 is a quarter of an inch.',
    howToMeasure: caliper,
  }),
  own(`${slide}-motor-bore`, 'm', 'length', [mm(3), mm(30)], {
    name: `Bore on the ${words} motor shaft`,
    means: 'Hole of the pulley or coupling that goes on the motor.',
    howToMeasure: bore,
  }),
  own(`${slide}-screw-end`, 'm', 'length', [mm(3), mm(40)], {
    name: `Drive end of the ${words} screw`,
    means: 'Diameter of the turned end that carries the pulley or coupling.',
    howToMeasure: caliper,
  }),
  own(`${slide}-screw-bore`, 'm', 'length', [mm(3), mm(40)], {
    name: `Bore on the ${words} screw`,
    means: 'Hole of the pulley or coupling that goes on the screw.',
    howToMeasure: bore,
  }),
];

const slideOf = (slide: 'carriage' | 'cross', words: string): Fact[] => [
  own(`${slide}-screw-bought`, 'm', 'length', [mm(80), mm(3000)], {
    name: `Whole length of the ${words} screw you have or are offered`,
    means: 'From end to end, turned ends included.',
    howToMeasure: 'Tape measure, or the drawing of the seller. Have a second person read it.',
  }),
  own(`${slide}-torque-limit`, 'N·m', 'torque', [0.1, 30], {
    name: `Torque limit set in the ${words} drive`,
    means:
      'The most that a servo may give, whatever happens. It is what keeps a crash from bending the screw.',
    howToMeasure: 'Read the setting back from the drive after the power was off.',
  }),
  own(`${slide}-give`, 'm', 'length', [0, mm(1)], {
    name: `Give of the ${words} under 200 N`,
    means: 'How far the slide moves when it is pushed and pulled hard while the motor holds.',
    howToMeasure:
      'Motor holding, indicator on the slide. Pull with a spring scale to 200 N (20 kg) one way, then the other. Write down half of the whole movement.',
  }),
  ...fitsOf(slide, words),
];

/** Screws that the lathe came with, and what is known of the slides once parts are in hand. */
export const slideFacts: readonly Fact[] = [
  {
    id: 'lead-screw-diameter',
    group: 'lathe',
    name: 'Diameter of the lead screw',
    means: 'Over the crests of its thread.',
    unit: 'm',
    show: 'length',
    sense: [mm(8), mm(50)],
    typical: lengths(16, 20, 24),
    howToMeasure: 'Caliper over the thread of the long screw, where it is not worn.',
  },
  {
    id: 'cross-screw-diameter',
    group: 'lathe',
    name: 'Diameter of the cross-feed screw',
    means: 'Over the crests of its thread.',
    unit: 'm',
    show: 'length',
    sense: [mm(5), mm(30)],
    typical: lengths(10, 12, 16),
    howToMeasure: 'Wind the slide off its screw, or measure the last turns with a caliper.',
  },
  ...slideOf('carriage', 'carriage'),
  ...slideOf('cross', 'cross slide'),
  own('motor-supply-volts', 'V', 'voltage', [5, 90], {
    name: 'Voltage of the motor supply',
    means: 'Direct current that the drives of the steppers get.',
    howToMeasure: 'Read the plate of the supply, or measure it with no motor moving.',
  }),
  own('motor-supply-amps', 'A', 'current', [0.5, 60], {
    name: 'Rating of the motor supply',
    means: 'The most current it gives for long.',
    howToMeasure: 'Read the plate of the supply; watts divided by volts where only watts are given.',
  }),
  own('drive-highest-volts', 'V', 'voltage', [10, 120], {
    name: 'Highest voltage that the drives stand',
    means: 'Direct current, the absolute limit.',
    howToMeasure: 'Data sheet of the drive. With two kinds of drive, the lower figure.',
  }),
  own('tightest-clearance', 'm', 'length', [0, mm(300)], {
    name: 'Tightest clearance of the slides',
    means:
      'The smallest gap between saddle, cross motor, guard, tailstock and chuck jaws at the four corners of the travel.',
    howToMeasure:
      'Drives off. Push both slides to each of the four corners by hand with the largest chuck and its jaws out. Measure the smallest gap you find.',
  }),
];
