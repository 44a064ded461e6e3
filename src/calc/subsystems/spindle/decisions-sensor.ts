import type { Decision } from '../../core/decision.ts';
import { lineEncoder } from './drive.ts';

export const sensorDecisions: readonly Decision[] = [
  {
    id: 'spindle-sensor',
    subsystem: 'spindle',
    place: 'guide',
    name: 'Spindle sensor',
    ask: 'How does the control know the angle of the spindle?',
    why: 'Where a thread starts and how true its pitch is depend on it.',
    thumb:
      'Counts a second are 4 × lines × turns a second. Stay under half of what the control can count. Drive the sensor one to one, without slip.',
    findOut:
      'Measure the outside of the back end of the spindle and the room around and behind it. Write down millimetres, and the highest count rate in the manual of the control.',
    assume: [
      'encoder-1000-up',
      'encoder-100-200',
      'ring-encoder',
      'slotted-disc',
      'one-mark-a-turn',
      'no-sensor',
    ],
    assumeWhy: 'It follows the spindle all round and suits any control that counts in hardware.',
    open: 'options',
    options: [
      {
        id: 'no-sensor',
        label: 'None',
        means: 'The control does not watch the spindle.',
        gains: 'Nothing to fit.',
        wrong: 'No threads and no feed by the turn.',
        skill: 1,
      },
      {
        id: 'one-mark-a-turn',
        label: 'One mark a turn',
        means: 'A sensor sees one mark on the spindle each turn (index pulse).',
        gains: 'Cheap. Fine with a stiff spindle and light passes.',
        wrong:
          'Pitch follows the average of the last turn. A 5 % sag in a 20 mm thread can put its end about 1 mm out if the control does not correct every turn.',
        skill: 2,
      },
      {
        id: 'slotted-disc',
        label: 'Home-made slotted disc',
        means: 'A disc with 60 to 360 counts a turn and two or three light sensors, plus one mark.',
        gains: 'A count rate that a PC can count in software.',
        wrong: 'Errors of the slots, chips, and stray light.',
        skill: 3,
        needs: 'An accurate way to cut the slots.',
      },
      {
        id: 'encoder-100-200',
        label: 'Bought encoder, 100 to 200 lines',
        means: 'A small rotary sensor on a toothed belt, with few lines for controls that count in software.',
        gains: 'Within what a printer port counts.',
        wrong: 'Coarse at very low speed.',
        skill: 3,
      },
      {
        id: 'encoder-1000-up',
        label: 'Bought encoder, 1,000 lines or more',
        means: 'A rotary sensor with a mark and a clean signal pair (line driver) on a toothed belt.',
        gains: 'Smooth threads, feed by the turn, a speed display.',
        wrong:
          'Overruns controls that count slowly. Oil in it kills it; a slipping pulley spoils the thread.',
        skill: 3,
      },
      {
        id: 'ring-encoder',
        label: 'Ring encoder around the spindle',
        means: 'A magnetic ring or hollow sensor directly on the spindle.',
        gains: 'No belt and no lag; the bore stays free.',
        wrong: 'Must run true within 0.05 mm, needs room, and costs more.',
        skill: 4,
      },
    ],
  },
  {
    id: 'sensor-place',
    subsystem: 'spindle',
    place: 'guide',
    name: 'Place of the sensor',
    ask: 'Where does the spindle sensor sit?',
    why: 'Anything that slips or gives between spindle and sensor shows in the thread.',
    thumb: 'One to one and toothed. The old change-gear stud turns with the spindle on many lathes.',
    findOut:
      'Mark the spindle and the change-gear stud. Turn the chuck ten turns: both marks must come round together.',
    askWhen: lineEncoder,
    assume: ['spindle-belt', 'stud-gear', 'on-spindle-end', 'on-motor-shaft'],
    assumeWhy: 'A toothed belt from the spindle fits most lathes.',
    open: 'options',
    options: [
      {
        id: 'spindle-belt',
        label: 'Toothed belt from the spindle, one to one',
        means: 'A pulley on the spindle drives the sensor with a toothed belt.',
        gains: 'No slip, and the bore stays free.',
        wrong: 'A pulley with a 30 to 45 mm bore has to be bored, and guarded.',
        skill: 3,
      },
      {
        id: 'stud-gear',
        label: 'On the old change-gear stud',
        means: 'The gear train that used to drive the lead screw turns the sensor instead.',
        gains: 'Often exactly one to one, and free once the change gears go.',
        wrong: 'Play in the gears shows as a wander; check the ratio first.',
        skill: 3,
      },
      {
        id: 'on-spindle-end',
        label: 'On the back end of the spindle',
        means: 'The sensor is coupled to the spindle itself.',
        gains: 'Nothing in between.',
        wrong: 'Closes the bore to bar and draw tubes.',
        skill: 3,
      },
      {
        id: 'on-motor-shaft',
        label: 'On the spindle motor',
        means:
          'The servo’s own encoder counts the motor, the ratio is worked out, and one mark on the spindle gives the start.',
        gains: 'Next to nothing to fit.',
        wrong: 'A V-belt or ribbed belt slips, and no thread can then be trusted. Only with a toothed belt.',
        skill: 2,
      },
    ],
  },
];
