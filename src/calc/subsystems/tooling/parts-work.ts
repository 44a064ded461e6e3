import { all, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { leadScrewAlone } from '../purpose/paths.ts';

const collets = is('work-holding', 'spring-collets');
const power = is('work-holding', 'power-chuck');
const throughBar = is('bar-feed', 'bar-against-stop', 'bar-puller');

export const workParts: readonly Part[] = [
  {
    id: 'spring-chuck-key',
    subsystem: 'tooling',
    name: 'Chuck key with a spring that throws it out',
    note: 'It cannot stay in the chuck by itself. Check that the square fits your chuck.',
    unit: 'each',
    combine: 'most',
    needs: [
      {
        when: is('work-holding', 'jaw-chuck', 'spring-collets', 'lever-collets'),
        qty: 1,
        why: 'a key left in the chuck at cycle start is the commonest bad start',
      },
      { when: leadScrewAlone, qty: 1, why: 'the chuck stays, and a key left in it flies' },
    ],
  },
  {
    id: 'collet-chuck',
    subsystem: 'tooling',
    name: 'Spring-collet chuck with collets',
    note: 'Choose the collet size by your largest bar. Ask for run-out at four diameters from the nose.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    inspect: 'Run-out under 0.02 mm on a ground pin 40 mm from the nose.',
    needs: [{ when: collets, qty: 1, why: 'collets on the spindle nose' }],
  },
  {
    id: 'collet-back-plate',
    subsystem: 'tooling',
    name: 'Back plate for the collet chuck',
    note: 'The disc between spindle nose and chuck. Buy it for your nose and turn its seat on your own spindle.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: collets, qty: 1, why: 'fits the collet chuck to your own spindle nose' }],
  },
  {
    id: 'lever-closer',
    subsystem: 'tooling',
    name: 'Lever collet closer with draw tube',
    note: 'Made for one spindle length and bore: measure both before you order.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('work-holding', 'lever-collets'), qty: 1, why: 'closes the collet without stopping' }],
  },
  {
    id: 'power-chuck-set',
    subsystem: 'tooling',
    name: 'Power chuck or closer with its cylinder',
    note: 'Its marked speed and the draw stroke must suit your spindle.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    inspect: 'The mark of highest speed is there and readable.',
    needs: [{ when: power, qty: 1, why: 'grips on command' }],
  },
  {
    id: 'pressure-switch',
    subsystem: 'tooling',
    name: 'Pressure switch for the grip',
    note: 'A contact that opens when the air falls. It stops the spindle by wire, not by program.',
    unit: 'each',
    combine: 'most',
    inspect: 'It opens at the pressure at which the chuck still holds.',
    needs: [{ when: power, qty: 1, why: 'stops the spindle when the grip goes' }],
  },
  {
    id: 'air-supply',
    subsystem: 'tooling',
    name: 'Compressed air: filter, regulator, compressor',
    note: 'Nothing if you have clean air at the lathe; a small compressor if you do not.',
    unit: 'lot',
    combine: 'most',
    needs: [
      { when: power, qty: 1, why: 'air for the chuck' },
      { when: is('chips-and-coolant', 'mist-or-air'), qty: 1, why: 'air for mist or for blowing chips' },
    ],
  },
  {
    id: 'bar-tube',
    subsystem: 'tooling',
    name: 'Tube and bush behind the spindle',
    note: 'A fixed tube over the whole bar, with a bush close to its size, and tape or a barrier behind the machine.',
    unit: 'set',
    combine: 'most',
    needs: [
      { when: throughBar, qty: 1, why: 'bar behind the headstock runs in a fixed tube' },
      {
        when: is('work-holding', 'lever-collets', 'power-chuck'),
        qty: 1,
        why: 'a closer invites long bar, and long bar whips',
      },
    ],
  },
  {
    id: 'spindle-dead-stop',
    subsystem: 'tooling',
    name: 'Dead stop for the spindle bore or the post',
    note: 'Something solid that every blank or bar is pushed against.',
    unit: 'each',
    combine: 'most',
    needs: [
      { when: is('bar-feed', 'bar-against-stop'), qty: 1, why: 'the bar is pushed against it' },
      {
        when: all(
          is('bar-feed', 'cut-blanks'),
          is('work-holding', 'spring-collets', 'lever-collets', 'power-chuck'),
        ),
        qty: 1,
        why: 'a collet has no face of its own to set a blank against',
      },
    ],
  },
  {
    id: 'bar-puller-part',
    subsystem: 'tooling',
    name: 'Bar puller',
    note: 'A sprung gripper on a shank for the tool post.',
    unit: 'each',
    combine: 'most',
    spares: 'A second pair of jaws.',
    needs: [{ when: is('bar-feed', 'bar-puller'), qty: 1, why: 'pulls the bar to length' }],
  },
  {
    id: 'drill-sleeves',
    subsystem: 'tooling',
    name: 'Drill sleeves for the tool post, and stub drills',
    note: 'Sleeves that hold drills on the centre line. Short drills wander less.',
    unit: 'set',
    combine: 'most',
    spares: 'Ten of the smallest drills.',
    needs: [{ when: is('holes', 'drill-in-tool-post'), qty: 1, why: 'drills held in the tool post' }],
  },
];
