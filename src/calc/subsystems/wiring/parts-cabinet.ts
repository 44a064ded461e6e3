import { all, always, any, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { glandCount } from './counts.ts';
import { cabinetWork, screenedWork, synchroniser } from './wired.ts';

/** Small goods that go into the cabinet, and the cabinet itself. */
export const cabinetParts: readonly Part[] = [
  {
    id: 'hook-up-wire',
    subsystem: 'wiring',
    name: 'Hook-up wire in colours',
    note: '0.5, 0.75 and 1.5 mm²; one colour for each job, as your code says.',
    unit: 'kit',
    combine: 'most',
    needs: [{ when: cabinetWork, qty: 1, why: 'wires inside the cabinet' }],
  },
  {
    id: 'rail-and-terminals',
    subsystem: 'wiring',
    name: 'Mounting rail and terminal blocks',
    note: '30 to 60 ways with end stops and jumpers.',
    unit: 'lot',
    combine: 'most',
    spares: 'A tenth more terminals.',
    needs: [{ when: cabinetWork, qty: 1, why: 'where wires from outside meet those inside' }],
  },
  {
    id: 'glands-and-trunking',
    subsystem: 'wiring',
    name: 'Glands, trunking and ties',
    note: 'A gland for each cable and a fifth more.',
    unit: 'lot',
    combine: 'most',
    size: glandCount,
    needs: [{ when: cabinetWork, qty: 1, why: 'holds cables where they enter' }],
  },
  {
    id: 'ferrites',
    subsystem: 'wiring',
    name: 'Ferrite rings and clamps',
    note: 'One at the drive end of noisy leads, one on the encoder lead.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: cabinetWork, qty: 1, why: 'takes the edge off noise' }],
  },
  {
    id: 'small-box-lot',
    subsystem: 'wiring',
    name: 'Wire, terminals, glands, ferrites and labels for a small box',
    note: 'A strip of 12 to 20 ways, a handful of ferrules and lugs, five glands, two clip-on ferrites.',
    unit: 'lot',
    combine: 'most',
    needs: [
      { when: all(screenedWork, synchroniser), qty: 1, why: 'one supply and one or two drives need no more' },
    ],
  },
  {
    id: 'steel-cabinet-part',
    subsystem: 'wiring',
    name: 'Steel cabinet with backplate',
    note: 'About 400 x 500 x 200 mm; deeper than the largest drive by 60 mm.',
    unit: 'each',
    combine: 'most',
    inspect: 'Lay the largest drive in it and shut the door.',
    needs: [{ when: is('housing', 'steel-cabinet'), qty: 1, why: 'houses the electronics' }],
  },
  {
    id: 'plastic-box-part',
    subsystem: 'wiring',
    name: 'Plastic or hobby box',
    note: 'With room round each supply for air. With one or two drives and room to spare it needs no fan.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: is('housing', 'plastic-box'), qty: 1, why: 'houses the electronics' }],
  },
  {
    id: 'fan-and-filters',
    subsystem: 'wiring',
    name: 'Fan, filters and guards',
    note: 'Blowing in, through a filter; count on half of the flow on its label.',
    unit: 'set',
    combine: 'most',
    spares: 'One pack of filters.',
    needs: [
      {
        when: any(is('housing', 'steel-cabinet'), all(is('housing', 'plastic-box'), not(synchroniser))),
        qty: 1,
        why: 'at most 45 °C inside',
      },
    ],
  },
  {
    id: 'earth-bar',
    subsystem: 'wiring',
    name: 'Earth bar, braids and bonding screws',
    note: 'One bar; bed, door and every motor go to it. A cable screen is not an earth.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: always, qty: 1, why: 'joins every metal part to the earth of the supply' }],
  },
];
