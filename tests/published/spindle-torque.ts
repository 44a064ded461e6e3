import { chuckGripAtSpeed } from '../../src/calc/formulas/chuck.ts';
import { slip, synchronousSpeed, torqueFromPower } from '../../src/calc/formulas/spindle.ts';
import { stopEnergy } from '../../src/calc/formulas/spindle-stop.ts';
import { type PublishedRow, row } from './row.ts';

const poles = [2, 4, 6, 8];
const speeds: readonly (readonly [number, readonly string[]])[] = [
  [50, ['3000', '1500', '1000', '750']],
  [60, ['3600', '1800', '1200', '900']],
];

const synchronousRows = speeds.flatMap(([frequency, column]) =>
  column.map((printed, at) =>
    row(synchronousSpeed, {
      what: `${poles[at]} poles at ${frequency} Hz`,
      source: { ref: 'Electrical Engineering Toolbox, synchronous speed of induction motors', at: 'table' },
      provenance: 'seen',
      inputs: { frequency, poles: poles[at]! },
      as: (speed) => speed * 60,
      printed,
      unit: 'turns a minute',
    }),
  ),
);

const handbook = { ref: "Machinery's Handbook, 31st edition", at: 'p. 1152, power from torque and speed' };
const horsepower = 745.6999;

const torqueRows = [
  row(slip, {
    what: '4 poles at 120 Hz, 2,000 turns a minute',
    source: { ref: 'Engineering Prep, electrical machines, problem 401', at: 'answer' },
    provenance: 'seen',
    inputs: { frequency: 120, poles: 4, speed: 2000 / 60 },
    printed: '0.44',
    unit: '1',
  }),
  row(torqueFromPower, {
    what: '30 W at 3,000 turns a minute',
    source: { ref: 'Yaskawa servo motor sizing, worked example', at: 'rated torque of the motor' },
    provenance: 'seen',
    inputs: { power: 30, speed: 50 },
    printed: '0.0955',
    unit: 'N·m',
  }),
  row(torqueFromPower, {
    what: 'the metric constant: 1 kW at one turn a minute',
    source: handbook,
    provenance: 'seen',
    inputs: { power: 1000, speed: 1 / 60 },
    printed: '9.55e3',
    unit: 'N·m',
  }),
  row(torqueFromPower, {
    what: 'the inch constant: one horsepower at one turn a minute',
    source: handbook,
    provenance: 'seen',
    inputs: { power: horsepower, speed: 1 / 60 },
    as: (torque) => torque / 0.112984829,
    printed: '63025',
    unit: 'in·lbf',
  }),
];

const turningRows = [
  row(stopEnergy, {
    what: '1,067 kg·m² at 300 turns a minute',
    source: { ref: 'OpenStax, College Physics', at: 'example 10.9, helicopter blades' },
    provenance: 'seen',
    inputs: { inertia: 1067, speed: 5 },
    printed: '5.26e5',
    unit: 'J',
    looser: { by: 0.0015, because: 'the source rounds the speed to 31.4 rad/s on the way' },
  }),
  row(chuckGripAtSpeed, {
    what: 'three jaws, 5.33 kg at 107 mm and 0.319 kg·m each, 1,200 turns a minute; the source prints the loss',
    source: { ref: 'Schunk ROTA NCX operating manual', at: 'p. 25, worked example' },
    provenance: 'memory',
    inputs: { gripAtRest: 69947, jawMoments: 3 * (5.33 * 0.107 + 0.319), speed: 20 },
    as: (grip) => 69947 - grip,
    printed: '42131',
    unit: 'N',
    looser: { by: 0.0001, because: 'the source rounds the jaw moments on the way' },
  }),
];

export const spindleTorqueRows: readonly PublishedRow[] = [...synchronousRows, ...torqueRows, ...turningRows];
