import type { Formula } from '../core/formula.ts';

/** Edges a second that a quadrature encoder sends: four for each line of the disc. */
export const encoderEdgeRate: Formula<{ lines: number; speed: number }> = {
  id: 'encoder-edge-rate',
  label: 'Encoder edges a second',
  equation: 'edges = 4 × lines × speed',
  tex: 'f = 4\\,N\\,n',
  inputs: { lines: '1', speed: 'rev/s' },
  unit: 'Hz',
  source: {
    ref: 'Automation Talk, encoder frequency worked example, 2011-02',
    at: 'channel frequency = speed × lines; four edges a line',
  },
  valid: { lines: [1, 100000], speed: [0, 200] },
  compute: ({ lines, speed }) => 4 * lines * speed,
};

/** Speed of the field of an induction motor, rev/s: twice the frequency over the number of poles. */
export const synchronousSpeed: Formula<{ frequency: number; poles: number }> = {
  id: 'synchronous-speed',
  label: 'Speed of the motor without slip (synchronous speed)',
  equation: 'speed = 2 × frequency ÷ poles',
  tex: 'n_s = \\frac{2 f}{p}',
  inputs: { frequency: 'Hz', poles: '1' },
  unit: 'rev/s',
  source: {
    ref: 'Electrical Engineering Toolbox, synchronous speed of induction motors',
    at: 'equation and table',
  },
  valid: { poles: [2, 12] },
  compute: ({ frequency, poles }) => (2 * frequency) / poles,
};

/** Share of the synchronous speed that an induction motor lags behind, a plain number; speed in rev/s. */
export const slip: Formula<{ frequency: number; poles: number; speed: number }> = {
  id: 'slip',
  label: 'Slip of the motor',
  equation: 'slip = (synchronous speed − speed) ÷ synchronous speed',
  tex: 's = \\frac{n_s - n}{n_s}',
  inputs: { frequency: 'Hz', poles: '1', speed: 'rev/s' },
  unit: '1',
  source: { ref: 'Engineering Prep, electrical machines, problem 401', at: 'definition of slip' },
  valid: { poles: [2, 12] },
  compute: ({ frequency, poles, speed }) => 1 - speed / synchronousSpeed.compute({ frequency, poles }),
};

/** Torque of a shaft that gives a power at a speed, N·m; W and rev/s. The handbook's 9550 is kW and turns a minute. */
export const torqueFromPower: Formula<{ power: number; speed: number }> = {
  id: 'torque-from-power',
  label: 'Torque from power and speed',
  equation: 'torque = power ÷ (2 × π × speed)',
  tex: 'T = \\frac{P}{2\\pi\\,n}',
  inputs: { power: 'W', speed: 'rev/s' },
  unit: 'N·m',
  source: { ref: 'Machinery’s Handbook, 31st edition', at: 'p. 1152, power from torque and speed' },
  valid: {},
  compute: ({ power, speed }) => power / (2 * Math.PI * speed),
};

/** Torque at the spindle of a belt position, N·m. Ratio is motor turns to one spindle turn. Plain mechanics. */
export const spindleTorque: Formula<{ motorTorque: number; ratio: number; efficiency: number }> = {
  id: 'spindle-torque',
  label: 'Torque at the spindle',
  equation: 'torque = motor torque × ratio × efficiency',
  tex: 'T_s = T_m\\,i\\,\\eta',
  inputs: { motorTorque: 'N·m', ratio: '1', efficiency: '1' },
  unit: 'N·m',
  source: { ref: 'plain mechanics', at: 'a belt drive gives torque for speed' },
  valid: { efficiency: [0, 1] },
  unverified: 'Follows from the belt ratio; no published worked figure is known.',
  compute: ({ motorTorque, ratio, efficiency }) => motorTorque * ratio * efficiency,
};

export const spindleFormulas = [
  encoderEdgeRate,
  synchronousSpeed,
  slip,
  torqueFromPower,
  spindleTorque,
] as const;
