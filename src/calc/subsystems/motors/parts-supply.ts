import { all, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { carriageDriven, crossDriven, tailstockDriven } from './driven.ts';

const onDirectCurrent = not(is('axis-motor', 'mains-servo'));
const enclosed = is('motor-supply', 'enclosed-supply');
const smallOnTransformer = all(is('motor-supply', 'transformer-supply'), is('motor-size', 'face-57-and-86'));
const largeMotors = is('motor-size', 'face-57-and-86', 'face-86-both');

export const supplyParts: readonly Part[] = [
  {
    id: 'enclosed-supply-part',
    subsystem: 'motors',
    name: 'Enclosed power supply, 350 to 500 W',
    note: 'Set to 36 to 40 V for 50 V drives; 48 V only for drives that stand 60 V or more; 60 to 70 V types for 80 V drives.',
    unit: 'each',
    combine: 'sum',
    spares: 'One spare if it is a cheap one.',
    inspect: 'Measure its voltage with no load before a drive is connected.',
    needs: [
      { when: enclosed, qty: 1, why: 'feeds the motor drives' },
      {
        when: all(enclosed, largeMotors, carriageDriven, crossDriven),
        qty: 1,
        why: '86 mm motors want more power or a second voltage',
      },
      {
        when: smallOnTransformer,
        qty: 1,
        why: 'the small drives cannot take the voltage of the transformer',
      },
      {
        when: all(tailstockDriven, not(enclosed), not(smallOnTransformer)),
        qty: 1,
        why: 'the tailstock drive needs its own low voltage',
      },
    ],
  },
  {
    id: 'transformer-supply-part',
    subsystem: 'motors',
    name: 'Transformer supply, 45 to 70 V, 500 VA, as parts',
    note: 'Ring transformer, rectifier, capacitor, bleed resistor and soft start. It rises 10 % with no load: count that in.',
    unit: 'kit',
    combine: 'most',
    spares: 'Five fuses.',
    inspect: 'Measured with no load, at or under nine tenths of what the drives stand.',
    needs: [{ when: is('motor-supply', 'transformer-supply'), qty: 1, why: 'feeds the motor drives' }],
  },
  {
    id: 'dc-fuses',
    subsystem: 'motors',
    name: 'Fuse and holder for each motor drive',
    note: 'Rated for direct current. A short in one motor then takes one fuse, not the supply.',
    unit: 'each',
    combine: 'sum',
    spares: 'Five fuses of each value.',
    needs: [
      { when: all(onDirectCurrent, carriageDriven), qty: 1, why: 'one for the carriage drive' },
      { when: all(onDirectCurrent, crossDriven), qty: 1, why: 'one for the cross-slide drive' },
      { when: tailstockDriven, qty: 1, why: 'one for the tailstock drive' },
    ],
  },
];
