import { all } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { carriageDriven, crossDriven, tailstockDriven } from '../motors/driven.ts';
import { twoMachines } from './kinds.ts';

export const sharingParts: readonly Part[] = [
  {
    id: 'changeover-interlock',
    subsystem: 'control',
    name: 'Changeover interlock: key switch, two locked contactors, second stop button',
    note: 'Contactors coupled so that both can never be in, a key that comes out of one place only, and a stop button at each machine in one line.',
    unit: 'set',
    combine: 'most',
    inspect: 'With the key at one machine the plugs of the other are dead, measured.',
    needs: [{ when: twoMachines, qty: 1, why: 'only one of the two machines can be live' }],
  },
  {
    id: 'second-machine-plugs',
    subsystem: 'control',
    name: 'Locking plugs and sockets for one axis, on both machines',
    note: 'Motor, feedback and home switch of one axis, coded so that no plug fits a wrong place.',
    unit: 'set',
    combine: 'sum',
    spares: 'One plug and pins of each size.',
    needs: [
      { when: all(twoMachines, carriageDriven), qty: 1, why: 'one set for the long axis' },
      { when: all(twoMachines, crossDriven), qty: 1, why: 'one set for the cross axis' },
      { when: all(twoMachines, tailstockDriven), qty: 1, why: 'one set for the third axis' },
      { when: twoMachines, qty: 1, why: 'one set for the spindle and its sensor' },
    ],
  },
];
