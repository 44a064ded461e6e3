import { is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { tailstockDriven } from './driven.ts';
import { perDriven, perLarge, perSmall } from './parts-motors.ts';

const closedLoop = is('axis-motor', 'closed-loop-stepper');
const servo = is('axis-motor', 'mains-servo');

/** Motors that come with their drive and cables. */
export const setParts: readonly Part[] = [
  {
    id: 'closed-set-57',
    subsystem: 'motors',
    name: 'Closed-loop stepper set, 57 or 60 mm face, 2 to 3 N·m',
    note: 'Motor, encoder, drive and cables. Read the highest voltage on the drive: most of this size stand 50 V.',
    unit: 'set',
    combine: 'sum',
    spares: 'A spare encoder cable.',
    inspect: 'The alarm contact changes when the encoder is unplugged.',
    needs: perSmall(closedLoop),
  },
  {
    id: 'closed-set-86',
    subsystem: 'motors',
    name: 'Closed-loop stepper set, 86 mm face, 4.5 to 8.5 N·m',
    note: 'Motor, encoder, drive and cables, for 60 to 70 V. Some drives want alternating current: read the plate.',
    unit: 'set',
    combine: 'sum',
    inspect: 'The alarm contact changes when the encoder is unplugged; shaft, key and register measured.',
    needs: perLarge(closedLoop),
  },
  {
    id: 'servo-400w',
    subsystem: 'motors',
    name: 'Mains servo set, 400 W',
    note: 'Motor, drive and cables. It must take step pulses and have a torque limit and an input that removes power safely.',
    unit: 'set',
    combine: 'sum',
    inspect: 'Voltage on the drive plate is yours; shaft measured; manual complete and readable.',
    needs: perSmall(servo),
  },
  {
    id: 'servo-750w',
    subsystem: 'motors',
    name: 'Mains servo set, 750 W',
    note: 'As the smaller set, for heavy carriages. Its peak push can wreck a screw: the torque limit is part of the order.',
    unit: 'set',
    combine: 'sum',
    inspect: 'Voltage on the drive plate is yours; shaft measured; manual complete and readable.',
    needs: perLarge(servo),
  },
  {
    id: 'used-dc-servo-set',
    subsystem: 'motors',
    name: 'Used servo with brushes and its drive',
    note: 'Buy motor, encoder and drive that ran together. Ask for a picture of the plates.',
    unit: 'set',
    combine: 'sum',
    spares: 'A matching spare motor and a set of brushes.',
    inspect: 'Brushes over half length; shaft turns freely; encoder gives clean pulses.',
    needs: perDriven(is('axis-motor', 'used-dc-servo')),
  },
  {
    id: 'tailstock-motor-set',
    subsystem: 'motors',
    name: 'Closed-loop stepper set for the tailstock',
    note: 'A 57 mm set with its drive: the quill has to know when it did not arrive.',
    unit: 'set',
    combine: 'most',
    inspect: 'The alarm contact changes when the encoder is unplugged.',
    needs: [{ when: tailstockDriven, qty: 1, why: 'the motor of the quill' }],
  },
  {
    id: 'belt-drive-tailstock',
    subsystem: 'motors',
    name: 'Toothed belt and two pulleys for the tailstock',
    note: 'Order the pulleys bored, or bore them before the lathe comes apart.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'One spare belt.',
    inspect: 'Bores within 0.01 mm of their shafts.',
    needs: [{ when: tailstockDriven, qty: 1, why: 'from the motor to the quill screw' }],
  },
];
