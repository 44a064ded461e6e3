import type { Path } from '../core/path.ts';
import { lashOnDiameter } from '../formulas/lash.ts';
import { curveOf, mm, type Values, type WorkingFigure } from './figure.ts';

/** Plays that are looked at, mm. */
const PLAY = { low: 0, high: 0.3 };

const onDiameter = (...lashes: readonly number[]): number => lashOnDiameter.compute({ lashes });

function answer({ nut = 0, bearing = 0, wanted = 0 }: Values) {
  const error = onDiameter(nut, bearing);
  return {
    say:
      error <= wanted
        ? 'Where the slide turns back, a diameter may be wrong by {error}. That is within the {wanted} you want.'
        : 'Where the slide turns back, a diameter may be wrong by {error}: more than the {wanted} you want.',
    rows: [
      { id: 'fromNut', label: 'From the nut', value: onDiameter(nut), written: mm },
      { id: 'fromBearing', label: 'From the bearing', value: onDiameter(bearing), written: mm },
      { id: 'error', label: 'On the diameter', value: error, written: mm },
      { id: 'wanted', label: 'What you want', value: wanted, written: mm },
    ],
    curves: [
      { name: 'on the diameter', points: curveOf(0, PLAY.high / 1000, (each) => onDiameter(each, bearing)) },
      { name: 'what you want', points: curveOf(0, PLAY.high / 1000, () => wanted, 1), broken: true },
    ],
    mark: [nut, error],
  } as const;
}

/** A play that was measured as a whole stands for nut and bearing together. */
function ownOf({ facts }: Path): Values {
  const whole = facts['cross-play'];
  return whole === undefined ? {} : { nut: whole, bearing: 0 };
}

/** What play in nut and bearing does to a diameter. */
export const play: WorkingFigure = {
  id: 'play',
  topic: 'cross-slide-screw',
  question: 'What does play do to a diameter?',
  begin:
    'Put in what your indicator shows at the nut and at the bearing. Play that was measured as a whole goes into the first.',
  inputs: [
    {
      id: 'nut',
      label: 'Play of the nut',
      unit: 'm',
      written: mm,
      ...PLAY,
      step: 0.005,
      example: 0.03,
    },
    {
      id: 'bearing',
      label: 'Play of bearing and bracket',
      unit: 'm',
      written: mm,
      ...PLAY,
      step: 0.005,
      example: 0.01,
    },
    {
      id: 'wanted',
      label: 'Error you accept on a diameter',
      unit: 'm',
      written: mm,
      low: 0.005,
      high: 0.2,
      step: 0.005,
      example: 0.05,
    },
  ],
  across: { label: 'play of the nut, mm', written: mm },
  up: { label: 'error on the diameter, mm', written: mm },
  ownOf,
  formulas: [lashOnDiameter.id],
  answer,
};
