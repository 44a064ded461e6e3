import type { Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { quotientOf } from '../../core/steps.ts';
import { softwareStepLimit } from '../../formulas/motion.ts';

const memory = 'from memory of the trade: read its manual before buying';

type Limits = Readonly<Record<string, number>>;

/** Edges a second that a control can count, from memory of the trade; its data sheet decides. */
const edges: Limits = {
  'parallel-port-pc': 15e3,
  'two-parallel-ports-pc': 15e3,
  'motion-card-pc': 5e6,
  'desktop-with-controller': 200e3,
  'standalone-control': 500e3,
  'small-board': 50e3,
  'thread-synchroniser': 400e3,
};

/** Step pulses a second to one drive of controls that make them in hardware; from memory of the trade. */
const pulses: Limits = {
  'motion-card-pc': 400e3,
  'desktop-with-controller': 100e3,
  'standalone-control': 150e3,
  'small-board': 30e3,
  'thread-synchroniser': 50e3,
};

const fromTable = (look: Look, table: Limits): Quantity | undefined => {
  const control = look.option('control') ?? '';
  const limit = table[control];
  return limit === undefined ? undefined : chosen(limit, 'Hz', 'control', control, memory);
};

/** A PC that times every pulse itself through a printer port. */
export const onPorts = (look: Look): boolean =>
  look.chosen('control', 'parallel-port-pc', 'two-parallel-ports-pc');

/** The beat in which a PC sets its step lines, s: the owner's from the fastest pulses it passed, else 25 µs. */
export function beat(look: Look): Quantity | undefined {
  if (!onPorts(look)) return undefined;
  const measured = look.measured('control-pulse-limit');
  const half = assumed(0.5, '1', 'one beat for the pulse, one for the gap');
  if (measured) return quotientOf('s', half, measured);
  return assumed(
    25e-6,
    's',
    'a PC that passes a night of timing test keeps a beat of 25 µs; from memory of the trade',
  );
}

export const countLimit = (look: Look): Quantity | undefined =>
  look.measured('control-count-limit') ?? fromTable(look, edges);

export const pulseLimit = (look: Look): Quantity | undefined =>
  look.measured('control-pulse-limit') ??
  (onPorts(look) ? derive(softwareStepLimit, { basePeriod: beat(look) }) : fromTable(look, pulses));
