import { decisionPosition, maskOf, type State } from './choices/state.ts';
import { facts } from './facts.ts';
import { encoderEdgeRate } from './formulas/spindle.ts';
import { inputCurrent } from './formulas/supply.ts';

const factAt = (id: string): number => facts.findIndex((fact) => fact.id === id);
const at = { power: factAt('spindle-power'), top: factAt('spindle-speed-max') };

const chosen = (state: State, decision: string, ...options: string[]): boolean =>
  (state.masks[decisionPosition(decision)]! & maskOf(decision, options)) !== 0;

/** The spindle motor the lathe came with stays, and with it the voltage on its plate. */
const keepsMotor = (state: State): boolean =>
  chosen(state, 'spindle-motor', 'keep-single-phase', 'keep-speed-knob');

/** Where the house has 120 V, a new circuit brings 230 V for a drive that wants it; a kept motor and a doubler drive stay on 120 V. */
function voltage(state: State): number {
  if (chosen(state, 'spindle-motor', 'doubler-drive')) return 120;
  if (!chosen(state, 'mains-supply', 'volts-120')) return 230;
  return chosen(state, 'supply-circuit', 'new-circuit') && !keepsMotor(state) ? 230 : 120;
}

/** Efficiency times power factor of what turns the spindle; from memory of the trade, the plate decides. */
function spindleShare(state: State): { efficiency: number; powerFactor: number } {
  if (chosen(state, 'spindle-motor', 'keep-single-phase')) return { efficiency: 0.6, powerFactor: 0.67 };
  if (chosen(state, 'spindle-motor', 'keep-speed-knob')) return { efficiency: 0.75, powerFactor: 0.65 };
  return { efficiency: 0.75 * 0.95, powerFactor: 0.65 };
}

function spindleInputCurrent(state: State): number {
  return inputCurrent.compute({
    power: state.figures[at.power]!,
    voltage: voltage(state),
    ...spindleShare(state),
  });
}

/** Watts that the axis supplies take out while cutting; from memory of the trade. */
function axisLoad(state: State): number {
  const small = 105;
  const large = 180;
  if (chosen(state, 'motor-size', 'face-57-and-86')) return small + large;
  const each = chosen(state, 'motor-size', 'face-86-both') ? large : small;
  return chosen(state, 'driven-axes', 'carriage-only', 'cross-slide-only') ? each : 2 * each;
}

const isComputer = (state: State): boolean =>
  chosen(
    state,
    'control',
    'parallel-port-pc',
    'two-parallel-ports-pc',
    'motion-card-pc',
    'desktop-with-controller',
  );

function machineCurrent(state: State): number {
  const axes = inputCurrent.compute({
    power: axisLoad(state),
    efficiency: 0.85,
    powerFactor: 0.6,
    voltage: voltage(state),
  });
  const computer = isComputer(state) ? 74 : 20;
  return spindleInputCurrent(state) + axes + computer / (0.65 * voltage(state));
}

/** Amps to earth from what turns the spindle: a drive leaks through its filter, a factory speed board has hardly one. */
function spindleLeakage(state: State): number {
  if (chosen(state, 'spindle-motor', 'keep-single-phase')) return 0.0002;
  return chosen(state, 'spindle-motor', 'keep-speed-knob') ? 0.0005 : 0.0035;
}

/** Amps to earth through filters and drives; figures of single devices from memory of the trade. */
function earthLeakage(state: State): number {
  const axes = chosen(state, 'axis-motor', 'mains-servo') ? 0.004 : 0.0015;
  return spindleLeakage(state) + axes + (isComputer(state) ? 0.0005 : 0);
}

const linesOf: Readonly<Record<string, number>> = {
  'one-mark-a-turn': 1,
  'slotted-disc': 100,
  'encoder-100-200': 100,
  'encoder-1000-up': 1024,
  'ring-encoder': 1024,
};

function encoderEdges(state: State): number {
  const lines = Object.entries(linesOf).find(([option]) => chosen(state, 'spindle-sensor', option))?.[1] ?? 0;
  return encoderEdgeRate.compute({ lines, speed: state.figures[at.top]! });
}

const measures: Readonly<Record<string, (state: State) => number>> = {
  'spindle-input-current': spindleInputCurrent,
  'machine-current': machineCurrent,
  'earth-leakage': earthLeakage,
  'encoder-edges': encoderEdges,
};

/** A worked-out figure of the machine as chosen, SI. Throws on an unknown id, an author's mistake. */
export function measure(state: State, id: string): number {
  const compute = measures[id];
  if (!compute) throw new Error(`no measure has the id ${id}`);
  return compute(state);
}

export const hasMeasure = (id: string): boolean => id in measures;
