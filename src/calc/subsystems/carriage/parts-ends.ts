import { all, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { beltOnCarriage, noKit } from './screw.ts';

const beltWhy = 'one for the belt drive';

/** Bearings, and what stands between motor and screw. */
export const endParts: readonly Part[] = [
  {
    id: 'end-block-carriage',
    subsystem: 'carriage',
    name: 'Block that takes the push of the carriage screw',
    note: 'Fixed-end block with a pair of bearings. Cheap ones hold plain bearings with play.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    spares: 'One pair of bearings.',
    inspect: 'Push the shaft end to end against an indicator: 0.01 mm accepted, 0.005 good.',
    stage: 'make-first',
    needs: [
      {
        when: all(is('carriage-screw-ends', 'one-end-held', 'bought-end-blocks'), noKit),
        qty: 1,
        why: 'one for the end that takes the push',
      },
    ],
  },
  {
    id: 'support-block-carriage',
    subsystem: 'carriage',
    name: 'Block that keeps the far end of the screw straight',
    note: 'Floating block, or a bearing in a plate. It must let the screw grow.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    stage: 'make-first',
    needs: [
      {
        when: all(is('carriage-screw-ends', 'bought-end-blocks', 'made-angular-block'), noKit),
        qty: 1,
        why: 'one for the far end',
      },
    ],
  },
  {
    id: 'bearings-carriage',
    subsystem: 'carriage',
    name: 'Angular-contact bearings for the carriage screw',
    note: 'A matched pair of a good make, for the block that you bore.',
    unit: 'pair',
    combine: 'most',
    scaled: true,
    inspect: 'Measure bore and outside before boring the seat.',
    stage: 'make-first',
    needs: [
      {
        when: is('carriage-screw-ends', 'made-angular-block'),
        qty: 1,
        why: 'one pair for the block you make',
      },
      { when: is('carriage-screw-ends', 'both-ends-held'), qty: 2, why: 'one pair for each end' },
    ],
  },
  {
    id: 'belt-drive-carriage',
    subsystem: 'carriage',
    name: 'Toothed belt and two equal pulleys for the carriage',
    note: '5 mm pitch, 15 mm wide, at least 18 teeth.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'One belt, and a small pulley if you bore it yourself.',
    inspect: 'Bores against the shafts, within 0.01 mm.',
    stage: 'make-first',
    needs: [{ when: all(is('carriage-coupling', 'carriage-belt-1-1'), noKit), qty: 1, why: beltWhy }],
  },
  {
    id: 'belt-drive-carriage-reduction',
    subsystem: 'carriage',
    name: 'Toothed belt and pulleys for a reduction of 2:1',
    note: '5 mm pitch, 15 mm wide, at least 18 teeth on the small pulley and six in mesh.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'One belt, and a small pulley if you bore it yourself.',
    inspect: 'Bores against the shafts, within 0.01 mm; room for the large pulley on the machine.',
    stage: 'make-first',
    needs: [{ when: all(is('carriage-coupling', 'carriage-belt-2-1'), noKit), qty: 1, why: beltWhy }],
  },
  {
    id: 'clamp-hub-carriage',
    subsystem: 'carriage',
    name: 'Clamp hub for a plain shaft, carriage',
    note: 'Grips a round shaft all round; a grub screw on a round shaft creeps.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: beltOnCarriage, qty: 1, why: 'one for the pulley on the plain motor shaft' }],
  },
  {
    id: 'belt-guard-carriage',
    subsystem: 'carriage',
    name: 'Belt guard for the carriage',
    note: 'Sheet and fixings. It is on before the first powered move.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: beltOnCarriage, qty: 1, why: beltWhy }],
  },
  {
    id: 'coupling-carriage',
    subsystem: 'carriage',
    name: 'Coupling without play, carriage',
    note: 'Disc, Oldham or beam type, bored for both shafts.',
    unit: 'each',
    combine: 'most',
    spares: 'One element.',
    inspect: 'Both bores against the shafts, within 0.01 mm.',
    stage: 'make-first',
    needs: [
      {
        when: is('carriage-coupling', 'carriage-direct', 'carriage-gearbox'),
        qty: 1,
        why: 'one between motor or gearbox and screw',
      },
    ],
  },
  {
    id: 'gearbox-carriage',
    subsystem: 'carriage',
    name: 'Planetary gearbox with little play',
    note: 'Flange to suit the motor. Ask for its play in minutes of arc: three to fifteen is common.',
    unit: 'each',
    combine: 'most',
    inspect: 'Hold the input and rock the output: write down the play.',
    needs: [
      { when: is('carriage-coupling', 'carriage-gearbox'), qty: 1, why: 'one between motor and screw' },
      {
        when: is('carriage-drive', 'rack-pinion'),
        qty: 1,
        why: 'a pinion turns too slowly for a bare motor',
      },
    ],
  },
];
