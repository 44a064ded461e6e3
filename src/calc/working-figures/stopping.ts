import { stopEnergy, stopPowerMean, stopPowerPeak, stopTorque } from '../formulas/spindle-stop.ts';
import { curveOf, newtonMetre, rpm, type Values, type WorkingFigure } from './figure.ts';

const TIME = { low: 0.5, high: 20 };
const seconds = { unit: 's', per: 1 } as const;
const watt = { unit: 'W', per: 1 } as const;
/** Seconds that a bare screwed nose is given. Common practice. */
const BARE_NOSE = 5;

function answer({ inertia = 0, speed = 0, time = 1 }: Values) {
  const energy = stopEnergy.compute({ inertia, speed });
  const torqueIn = (each: number) => stopTorque.compute({ inertia, speed, time: each });
  return {
    say:
      'Stopping {speed} in {time} takes out {energy}, {peak} at first, and twists the nose with {torque}. ' +
      (time < BARE_NOSE
        ? 'That is for a chuck that cannot come loose: a bare screwed nose is given 5 s or more.'
        : 'Common practice gives a bare screwed nose no less; in reverse it may come loose all the same.'),
    rows: [
      { id: 'energy', label: 'Energy in all that turns', value: energy, written: { unit: 'J', per: 1 } },
      {
        id: 'mean',
        label: 'Power, mean of the stop',
        value: stopPowerMean.compute({ energy, time }),
        written: watt,
      },
      {
        id: 'peak',
        label: 'Power at its start',
        value: stopPowerPeak.compute({ energy, time }),
        written: watt,
      },
      { id: 'torque', label: 'Torque on the nose', value: torqueIn(time), written: newtonMetre },
    ],
    curves: [{ name: 'torque on the nose', points: curveOf(TIME.low, TIME.high, torqueIn, 96) }],
    mark: [time, torqueIn(time)],
  } as const;
}

/** What a braked stop of the spindle asks of resistor and chuck, against its time. */
export const stopping: WorkingFigure = {
  id: 'stopping',
  topic: 'stop-circuit',
  question: 'What does a quick stop ask of chuck and resistor?',
  begin:
    'Set your largest chuck and its highest speed. A chuck of 9 kg and 160 mm has about 290 kg·cm², half of its mass times its radius squared; spindle and work add about a quarter.',
  inputs: [
    {
      id: 'inertia',
      label: 'Inertia of all that turns',
      unit: 'kg·m²',
      written: { unit: 'kg·cm²', per: 1e4 },
      low: 5,
      high: 5000,
      step: 5,
      example: 290,
      own: 'spindle-inertia',
    },
    {
      id: 'speed',
      label: 'Spindle speed',
      unit: 'rev/s',
      written: rpm,
      low: 100,
      high: 5000,
      step: 50,
      example: 2000,
      own: 'chuck-speed-limit',
    },
    {
      id: 'time',
      label: 'Time to stop',
      unit: 's',
      written: seconds,
      ...TIME,
      step: 0.5,
      example: 3,
      own: 'stop-time',
    },
  ],
  across: { label: 'time to stop, s', written: seconds },
  up: { label: 'torque on the nose, N·m', written: newtonMetre },
  formulas: [stopEnergy.id, stopPowerMean.id, stopPowerPeak.id, stopTorque.id],
  answer,
};
