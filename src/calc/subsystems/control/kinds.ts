import { all, any, is } from '../../core/condition.ts';

/** Controls whose timing is done by the software of a PC through printer ports. */
export const onPorts = is('control', 'parallel-port-pc', 'two-parallel-ports-pc');

/** Controls whose PC has to keep real time. */
export const realTimePc = is('control', 'parallel-port-pc', 'two-parallel-ports-pc', 'motion-card-pc');

/** Controls that run on a PC with screen and keyboard. */
export const onComputer = is(
  'control',
  'parallel-port-pc',
  'two-parallel-ports-pc',
  'motion-card-pc',
  'desktop-with-controller',
);

/** Closed controls and boards whose manual decides what they can do. */
export const asTheMakerMadeIt = is(
  'control',
  'desktop-with-controller',
  'standalone-control',
  'small-board',
  'thread-synchroniser',
);

export const synchroniser = is('control', 'thread-synchroniser');
export const twoMachines = is('machines-served', 'two-machines-in-turn');

/** A handwheel at a PC with one printer port: more inputs than the port has. */
export const wheelsOnOnePort = all(
  is('control', 'parallel-port-pc'),
  any(
    is('hand-use', 'electronic-handwheels'),
    is('operator-panel', 'pendant-and-buttons', 'handwheel-panel'),
  ),
);
