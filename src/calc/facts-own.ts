import type { Unit } from './core/quantity.ts';
import type { Fact, Show } from './facts.ts';

type Words = Pick<Fact, 'name' | 'means' | 'howToMeasure'>;

const own = (id: string, unit: Unit, show: Show, sense: Fact['sense'], words: Words): Fact => ({
  id,
  group: 'own',
  unit,
  show,
  sense,
  ...words,
});

const sheet = 'Read it in the data sheet of the very motor you buy.';

/** Motor figures for one slide, in the same words for both. */
const motorOf = (slide: 'carriage' | 'cross', words: string): Fact[] => [
  own(`${slide}-motor-torque`, 'N·m', 'torque', [0.1, 30], {
    name: `Holding torque of the ${words} motor`,
    means:
      'What the motor holds against when it stands still under full current. Of a servo: its rated torque.',
    howToMeasure: sheet,
  }),
  own(`${slide}-motor-current`, 'A', 'current', [0.3, 12], {
    name: `Current of the ${words} motor`,
    means: 'Rated current of a winding (phase).',
    howToMeasure: sheet,
  }),
  own(`${slide}-motor-inductance`, 'H', 'inductance', [0.0003, 0.03], {
    name: `Inductance of the ${words} motor`,
    means: 'How much a winding resists a change of current. It decides the voltage that suits the motor.',
    howToMeasure: sheet,
  }),
  own(`${slide}-torque-at-rapid`, 'N·m', 'torque', [0.02, 30], {
    name: `Torque of the ${words} motor at rapid speed`,
    means:
      'Read from the torque curve at the speed that the motor turns in a rapid move, at your supply voltage.',
    howToMeasure:
      'Find the curve of the motor with your drive and voltage; go up from the speed; read the torque.',
  }),
  own(`${slide}-friction-force`, 'N', 'force', [2, 600], {
    name: `Force to slide the ${words}`,
    means: 'The pull that keeps it moving by hand, with nothing driving it.',
    howToMeasure:
      'Open the half nut, take the rack pinion or the cross screw out, hook a spring scale on and pull slowly. Write down what keeps it moving, and what starts it.',
  }),
  own(`${slide}-screw-root`, 'm', 'length', [0.004, 0.06], {
    name: `Root diameter of the ${words} screw`,
    means: 'The diameter at the bottom of the thread: it carries the load.',
    howToMeasure: 'Catalogue of the screw, or a caliper with knife edges in the groove.',
  }),
  own(`${slide}-lead`, 'm', 'pitch', [0.0005, 0.05], {
    name: `Lead of the ${words} screw you buy`,
    means: 'How far the nut moves in one turn.',
    howToMeasure: 'Catalogue of the screw, or turn it ten times and measure.',
  }),
];

/** What overrides the design's own tables once the owner knows better. Nothing is assumed for these. */
export const ownFacts: readonly Fact[] = [
  ...motorOf('carriage', 'carriage'),
  ...motorOf('cross', 'cross slide'),
  own('cross-play', 'm', 'length', [0, 0.002], {
    name: 'Play of the cross slide',
    means: 'How far the slide may be moved while the screw stands still (backlash).',
    howToMeasure:
      'Indicator against the slide. Wind in 1 mm, zero the indicator, wind back until it moves: what the dial turned meanwhile is the play.',
  }),
  own('control-pulse-limit', 'Hz', 'rate', [1000, 20e6], {
    name: 'Fastest step pulses of the control',
    means: 'How many step pulses a second the control can send to one drive.',
    howToMeasure: 'Manual of the control. With a PC that times the pulses itself: from its own latency test.',
  }),
  own('control-count-limit', 'Hz', 'rate', [100, 50e6], {
    name: 'Fastest counting of the control',
    means: 'How many edges of the spindle sensor a second the control can count.',
    howToMeasure: 'Manual of the control, under encoder or counter input.',
  }),
  own('drive-input-current', 'A', 'current', [0.5, 40], {
    name: 'Input current on the plate of the spindle drive',
    means: 'What the spindle drive takes from the mains at full load.',
    howToMeasure: 'Read the plate on the drive: input, at your voltage.',
  }),
  own('drive-leakage', 'A', 'small-current', [0, 0.1], {
    name: 'Leakage of the spindle drive',
    means: 'Current that its filter lets flow to earth.',
    howToMeasure: 'Data sheet of the drive or of its filter, in milliamps.',
  }),
  own('spindle-plate-current', 'A', 'current', [0.3, 30], {
    name: 'Current on the plate of the spindle motor',
    means: 'What the motor takes between two of its three leads at full load.',
    howToMeasure: 'Read the plate of the motor: amps, at the voltage that its drive gives.',
  }),
  own('longest-cable-run', 'm', 'length', [0.3, 15], {
    name: 'Longest cable run',
    means: 'From the cabinet to the motor or switch that is furthest away.',
    howToMeasure:
      'Lay a string where the cable will lie, slide at the far end of its travel. Measure the string.',
  }),
  own('break-chance', '1', 'share', [0, 0.5], {
    name: 'Holes that cost you a drill or tap',
    means: 'Share of the holes in this casting that break a drill or a tap.',
    howToMeasure:
      'From the last twenty holes you drilled and tapped in cast iron: broken tools divided by holes.',
  }),
  own('cabinet-width', 'm', 'length', [0.1, 1.5], {
    name: 'Width of the cabinet',
    means: 'Outside, from side to side, of the box that you have or mean to buy.',
    howToMeasure: 'Tape measure, or the catalogue.',
  }),
  own('cabinet-height', 'm', 'length', [0.1, 2], {
    name: 'Height of the cabinet',
    means: 'Outside, from bottom to top.',
    howToMeasure: 'Tape measure, or the catalogue.',
  }),
  own('cabinet-depth', 'm', 'length', [0.05, 0.8], {
    name: 'Depth of the cabinet',
    means: 'Outside, from the wall to the front of the door.',
    howToMeasure: 'Tape measure, or the catalogue.',
  }),
];
