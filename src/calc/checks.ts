import { decisionPosition, optionsOf, type State } from './choices/state.ts';
import { atLeastLimit, atMost, type Check } from './core/check.ts';
import type { Machine } from './core/machine.ts';
import { assumed, derivedFrom } from './core/quantity.ts';
import { measure } from './measures.ts';

/** A check of how the pieces fit; undefined where it does not arise on this path. */
type Judge = (state: State, machine: Machine) => Check | undefined;

const option = (state: State, decision: string): string | undefined => {
  const at = decisionPosition(decision);
  return optionsOf(at, state.masks[at]!)[0];
};

const memory = 'from memory of the trade: measure the part that you buy';

/** Room that a nut needs: the largest of body, flange across its flats and housing, and 2 mm. */
const nutHeight: Readonly<Record<string, number>> = {
  'ball-screw-8': 0.024,
  'ball-screw-12': 0.032,
  'ball-screw-16': 0.042,
  'sliding-cross-screw': 0.024,
};

const tunnel: Judge = (state, machine) => {
  const need = nutHeight[option(state, 'cross-screw') ?? ''];
  if (need === undefined) return undefined;
  const height = machine.facts['tunnel-height']!;
  return atLeastLimit({
    id: 'cross-tunnel',
    label: 'Room for the nut under the cross slide',
    value: height.origin.kind === 'answered' ? height : undefined,
    limit: assumed(need, 'm', memory),
    remedy:
      height.origin.kind === 'answered'
        ? 'Take a smaller screw, keep the original one, or relieve the saddle: metal that cannot be put back.'
        : 'Needs: the height of the tunnel. The lathe page says how to measure it, in about 20 minutes.',
    decisions: ['cross-screw', 'hand-use'],
  });
};

const supply: Judge = (state, machine) => {
  const rating = machine.facts['outlet-amps']!;
  return atMost({
    id: 'supply-current',
    label: 'Current of the whole machine',
    value: derivedFrom('input-current', measure(state, 'machine-current'), 'A'),
    limit: derivedFrom('four-fifths-of-outlet', 0.8 * rating.value, 'A'),
    comfort: 1.1,
    remedy:
      'Have an electrician fit a circuit for the lathe, or keep the spindle motor it has. The plate of the drive decides, not this estimate.',
    decisions: ['supply-circuit', 'spindle-motor', 'axis-motor'],
  });
};

const deviceRating: Readonly<Record<string, number>> = { 'trips-at-5-ma': 0.005, 'trips-at-30-ma': 0.03 };

const leakage: Judge = (state) => {
  const rating = deviceRating[option(state, 'ground-fault-device') ?? ''];
  return atMost({
    id: 'earth-leakage',
    label: 'Leakage to earth against the safety device',
    value: derivedFrom('leakage-sum', measure(state, 'earth-leakage'), 'A'),
    limit: rating === undefined ? undefined : derivedFrom('two-fifths-of-device', 0.4 * rating, 'A'),
    comfort: 1.3,
    remedy:
      rating === undefined
        ? 'Needs: which residual-current (ground-fault) device feeds the outlet. Read it on the device or ask an electrician.'
        : 'Never bypass the device and never lift an earth. Ask an electrician for a suitable device or circuit.',
    decisions: ['ground-fault-device', 'spindle-motor', 'supply-circuit'],
  });
};

/** Edges a second that a control can count, from memory of the trade; its data sheet decides. */
const edgeLimit: Readonly<Record<string, number>> = {
  'parallel-port-pc': 15e3,
  'two-parallel-ports-pc': 15e3,
  'motion-card-pc': 5e6,
  'desktop-with-controller': 200e3,
  'standalone-control': 500e3,
  'small-board': 50e3,
  'thread-synchroniser': 400e3,
};

const counting: Judge = (state) => {
  const sensor = option(state, 'spindle-sensor');
  const limit = edgeLimit[option(state, 'control') ?? ''];
  if (sensor === undefined || sensor === 'no-sensor' || limit === undefined) return undefined;
  return atMost({
    id: 'encoder-count-rate',
    label: 'Counts from the spindle sensor',
    value: derivedFrom('encoder-edge-rate', measure(state, 'encoder-edges'), 'Hz'),
    limit: assumed(limit, 'Hz', memory),
    comfort: 2,
    remedy:
      'Fewer lines on the sensor, or a control that counts in hardware. Read the limit in the manual of the control before buying.',
    decisions: ['spindle-sensor', 'control'],
  });
};

const drivenByElectronics = ['three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle'];

const chuckSpeed: Judge = (state, machine) => {
  if (!drivenByElectronics.includes(option(state, 'spindle-motor') ?? '')) return undefined;
  const marked = machine.facts['chuck-marked-speed']!;
  return atMost({
    id: 'chuck-speed',
    label: 'Top speed against the chuck',
    value: machine.facts['spindle-speed-max'],
    limit: marked.origin.kind === 'answered' ? marked : machine.facts['spindle-speed-max'],
    remedy:
      'Set the limit in the drive for the fastest belt position, to the lowest of: the mark on the chuck, the top speed the lathe left its maker with, and what this work can stand. Clamp the speed in every program as well.',
    decisions: ['spindle-motor', 'speed-command'],
  });
};

/** Pitch of gang tools, clearance, half of the largest bar, and what the tool must pass the centre by. */
const gangReach = (tools: number): number => (tools - 1) * 0.035 + 0.01 + 0.005 + 0.0015;

const gang: Judge = (state, machine) => {
  if (option(state, 'tool-holding') !== 'gang-tools') return undefined;
  const travel = machine.facts['cross-travel']!;
  return atLeastLimit({
    id: 'gang-travel',
    label: 'Cross travel for three tools in line',
    value: derivedFrom('travel-less-nut', Math.max(0, travel.value - 0.025), 'm', { travel }),
    limit: derivedFrom('gang-reach', gangReach(3), 'm'),
    remedy:
      'Two tools in line, smaller bar, or a post that changes tools by hand. A longer nut takes 25 mm of travel.',
    decisions: ['tool-holding', 'cross-nut', 'compound'],
  });
};

const judges: readonly Judge[] = [tunnel, supply, leakage, counting, chuckSpeed, gang];

/** Every check that arises on this path. */
export const checksOf = (state: State, machine: Machine): Check[] =>
  judges.flatMap((judge) => judge(state, machine) ?? []);
