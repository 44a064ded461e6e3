import { all, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { carriageDriven, crossDriven } from '../motors/driven.ts';
import { carriageScrewToCover, crossScrewToCover, screwsToCover } from './wired.ts';

const homing = not(is('home-limits', 'no-homing'));
const limits = is('home-limits', 'home-and-limit-switches');
const mark = is('home-limits', 'home-and-motor-mark');

/** Switches, covers and oil. */
export const senseParts: readonly Part[] = [
  {
    id: 'inductive-sensor',
    subsystem: 'wiring',
    name: 'Inductive sensor, 8 mm, three wires',
    note: 'Sees steel at 1 to 2 mm and drifts 0.02 to 0.05 mm over a day: enough along the bed, too much across. Buy the output type that your inputs want (sourcing or sinking).',
    unit: 'each',
    combine: 'sum',
    inspect: 'Lamp on and output measured before it is fitted.',
    stage: 'machine-wiring',
    needs: [
      { when: all(homing, not(mark), carriageDriven), qty: 1, why: 'home of the carriage' },
      { when: all(limits, carriageDriven), qty: 1, why: 'far limit of the carriage' },
      { when: all(limits, crossDriven), qty: 1, why: 'far limit of the cross slide' },
    ],
  },
  {
    id: 'precision-switch',
    subsystem: 'wiring',
    name: 'Sealed precision plunger switch',
    note: 'Repeats within a few thousandths of a millimetre, which shows twice on a diameter.',
    unit: 'each',
    combine: 'sum',
    stage: 'machine-wiring',
    needs: [
      { when: all(homing, crossDriven), qty: 1, why: 'home of the cross slide' },
      { when: all(mark, carriageDriven), qty: 1, why: 'home of the carriage, always in the same motor turn' },
    ],
  },
  {
    id: 'flag-and-bracket',
    subsystem: 'wiring',
    name: 'Flag and bracket for a sensor',
    note: 'Where no chip can lie on it.',
    unit: 'each',
    combine: 'sum',
    stage: 'machine-wiring',
    needs: [
      { when: all(homing, carriageDriven), qty: 1, why: 'home of the carriage' },
      { when: all(homing, crossDriven), qty: 1, why: 'home of the cross slide' },
      { when: all(limits, carriageDriven), qty: 1, why: 'far limit of the carriage' },
      { when: all(limits, crossDriven), qty: 1, why: 'far limit of the cross slide' },
    ],
  },
  {
    id: 'spare-sensor',
    subsystem: 'wiring',
    name: 'Spare sensor',
    note: 'The same kind as those fitted.',
    unit: 'each',
    combine: 'most',
    stage: 'machine-wiring',
    needs: [{ when: homing, qty: 1, why: 'a sensor dies by a chip on a Sunday' }],
  },
  {
    id: 'wipers',
    subsystem: 'wiring',
    name: 'Way wipers and felts',
    note: 'For saddle, cross slide and nuts.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'One set.',
    stage: 'machine-wiring',
    needs: [
      {
        when: all(screwsToCover, not(is('which-lathe', 'dead-training-machine'))),
        qty: 1,
        why: 'chips are kept off the ways and out of the new nuts',
      },
    ],
  },
  {
    id: 'bellows-part',
    subsystem: 'wiring',
    name: 'Bellows over a screw or way',
    note: 'Length open: travel times 1.25.',
    unit: 'each',
    combine: 'sum',
    scaled: true,
    stage: 'machine-wiring',
    needs: [
      { when: all(is('way-covers', 'bellows'), carriageScrewToCover), qty: 1, why: 'carriage' },
      { when: all(is('way-covers', 'bellows'), crossScrewToCover), qty: 1, why: 'cross slide' },
    ],
  },
  {
    id: 'spring-covers-part',
    subsystem: 'wiring',
    name: 'Spiral steel cover over a screw',
    note: 'Gloves on and the band held shut while it is fitted.',
    unit: 'each',
    combine: 'sum',
    scaled: true,
    stage: 'machine-wiring',
    needs: [
      { when: all(is('way-covers', 'spring-covers'), carriageScrewToCover), qty: 1, why: 'carriage screw' },
      { when: all(is('way-covers', 'spring-covers'), crossScrewToCover), qty: 1, why: 'cross-slide screw' },
    ],
  },
  {
    id: 'one-shot-oiler-part',
    subsystem: 'wiring',
    name: 'One-shot oil pump, lines and fittings',
    note: 'Six to ten points, each with its own metering fitting.',
    unit: 'kit',
    combine: 'most',
    spares: 'Three fittings.',
    stage: 'machine-wiring',
    needs: [{ when: is('lubrication', 'one-shot-oiler'), qty: 1, why: 'oils ways and nuts' }],
  },
];
