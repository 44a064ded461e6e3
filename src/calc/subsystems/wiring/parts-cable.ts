import { all, any, is, not } from '../../core/condition.ts';
import { figure, type Machine } from '../../core/machine.ts';
import type { Part } from '../../core/part.ts';
import { carriageDriven, crossDriven, tailstockDriven } from '../motors/driven.ts';
import { ferruleCount, labelCount } from './counts.ts';
import { axisEncoders, cabinetWork, leadsInTheSet, screenedWork, synchroniser } from './wired.ts';

/** Metres for n runs along the bed with two metres to the cabinet each and a fifth to spare. */
const runs = (n: number) => (m: Machine) => Math.ceil(n * (figure(m, 'bed-length') + 2) * 1.2);

/** Metres for one run with one metre to the cabinet and a fifth to spare. */
const shortRun = (m: Machine) => Math.ceil((figure(m, 'bed-length') + 1) * 1.2);

/** Metres of chain that follow the carriage. */
const chain = (m: Machine) => Math.ceil(figure(m, 'carriage-travel') / 2 + 0.3);

/** Motor leads are made up by the owner: neither moulded nor part of the set. */
const byMetre = all(is('cable', 'screened-cable'), not(leadsInTheSet));
const homing = all(screenedWork, not(is('home-limits', 'no-homing')));
const limits = all(screenedWork, is('home-limits', 'home-and-limit-switches'));
/** The lot for a small box has ferrules and labels in it. */
const smallLot = all(screenedWork, synchroniser);
const spindleSensor = all(screenedWork, not(is('spindle-sensor', 'no-sensor')));
const spindleEncoder = is('spindle-sensor', 'encoder-100-200', 'encoder-1000-up', 'ring-encoder');
const spindleLead = all(
  screenedWork,
  is('spindle-motor', 'three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle'),
);

export const cableParts: readonly Part[] = [
  {
    id: 'power-cable',
    subsystem: 'wiring',
    name: 'Screened power cable, four cores',
    note: '1 to 1.5 mm², with a braid; the flexible kind where it moves.',
    unit: 'metre',
    combine: 'sum',
    spares: 'A fifth more is counted in.',
    needs: [
      { when: all(byMetre, carriageDriven), qty: runs(1), why: 'to the carriage motor' },
      { when: all(byMetre, crossDriven), qty: runs(1), why: 'to the cross-slide motor, through the chain' },
      {
        when: all(screenedWork, tailstockDriven),
        qty: runs(1),
        why: 'to the tailstock motor',
      },
      { when: spindleLead, qty: runs(1), why: 'from the spindle drive to its motor' },
    ],
  },
  {
    id: 'sensor-cable',
    subsystem: 'wiring',
    name: 'Screened sensor cable, three or four cores',
    note: '0.25 to 0.5 mm². One run for each sensor.',
    unit: 'metre',
    combine: 'sum',
    stage: 'machine-wiring',
    needs: [
      { when: all(homing, carriageDriven), qty: runs(1), why: 'home switch of the carriage' },
      { when: all(homing, crossDriven), qty: runs(1), why: 'home switch of the cross slide' },
      { when: all(limits, carriageDriven), qty: runs(1), why: 'limit switch of the carriage' },
      { when: all(limits, crossDriven), qty: runs(1), why: 'limit switch of the cross slide' },
      { when: all(spindleSensor, not(spindleEncoder)), qty: runs(1), why: 'sensor at the spindle' },
      { when: screenedWork, qty: runs(1), why: 'stop button' },
      { when: all(screenedWork, is('chuck-guard', 'shield-with-switch')), qty: runs(1), why: 'guard switch' },
    ],
  },
  {
    id: 'pair-cable',
    subsystem: 'wiring',
    name: 'Screened cable with twisted pairs',
    note: 'For encoders: each signal is twisted with its opposite.',
    unit: 'metre',
    combine: 'sum',
    needs: [
      {
        when: all(byMetre, axisEncoders, carriageDriven),
        qty: shortRun,
        why: 'encoder of the carriage motor',
      },
      {
        when: all(byMetre, axisEncoders, crossDriven),
        qty: shortRun,
        why: 'encoder of the cross-slide motor',
      },
      { when: all(spindleSensor, spindleEncoder), qty: shortRun, why: 'encoder of the spindle' },
    ],
  },
  {
    id: 'moulded-lead-set',
    subsystem: 'wiring',
    name: 'Moulded motor and encoder leads',
    note: 'Ordered one length longer than the string says, and for the very motor.',
    unit: 'set',
    combine: 'most',
    inspect: 'Ring out every wire against the drawing of the drive.',
    needs: [{ when: is('cable', 'moulded-leads'), qty: 1, why: 'leads of the axis motors' }],
  },
  {
    id: 'locking-connectors',
    subsystem: 'wiring',
    name: 'Round connectors that lock, 4 to 12 way',
    note: 'Different numbers of ways, so that no plug fits the wrong socket.',
    unit: 'pair',
    combine: 'sum',
    spares: 'Two of each size.',
    keep: [{ when: cabinetWork, qty: 2, why: 'a pin bent or soldered wrong spoils a pair' }],
    needs: [
      { when: all(byMetre, carriageDriven), qty: 1, why: 'carriage motor' },
      { when: all(byMetre, crossDriven), qty: 1, why: 'cross-slide motor' },
      { when: all(byMetre, axisEncoders), qty: 1, why: 'motor encoders' },
      { when: spindleSensor, qty: 1, why: 'spindle sensor' },
      { when: homing, qty: 1, why: 'home switches' },
      { when: all(screenedWork, not(synchroniser)), qty: 1, why: 'stop button and guard' },
    ],
  },
  {
    id: 'cable-chain',
    subsystem: 'wiring',
    name: 'Cable chain or flexible conduit',
    note: 'Half the carriage travel and 0.3 m; the bend no tighter than the cable allows.',
    unit: 'metre',
    combine: 'most',
    stage: 'machine-wiring',
    needs: [
      {
        when: all(screenedWork, any(crossDriven, is('carriage-drive', 'rack-pinion'))),
        qty: chain,
        why: 'leads that travel with the carriage',
      },
    ],
  },
  {
    id: 'loose-wire',
    subsystem: 'wiring',
    name: 'Loose wire and hobby plugs',
    note: 'In the place of screened cable and locking connectors.',
    unit: 'lot',
    combine: 'most',
    needs: [{ when: is('cable', 'unscreened-wire'), qty: 1, why: 'all wires to motors and switches' }],
  },
  {
    id: 'terminals-and-ferrules',
    subsystem: 'wiring',
    name: 'Ferrules, lugs and crimp terminals',
    note: 'An assortment; 150 to 300 ferrules go into a cabinet.',
    unit: 'kit',
    combine: 'most',
    size: ferruleCount,
    needs: [{ when: not(smallLot), qty: 1, why: 'an end on every wire' }],
  },
  {
    id: 'labels-and-sleeves',
    subsystem: 'wiring',
    name: 'Labels, sleeves and wire numbers',
    note: '80 to 150 numbers, the same as on the drawing.',
    unit: 'lot',
    combine: 'most',
    size: labelCount,
    needs: [{ when: not(smallLot), qty: 1, why: 'a number on both ends of every wire' }],
  },
];
