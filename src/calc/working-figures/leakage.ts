import { LEAKAGE_SHARE, residualCurrentMargin, secondEarthShare } from '../formulas/leakage.ts';
import { curveOf, percent, type Values, type WorkingFigure } from './figure.ts';

const milliampere = { unit: 'mA', per: 1000 } as const;
/** A that all of it may come to in the picture. */
const MOST = 0.025;

const tripSays = (share: number): string => {
  if (share <= LEAKAGE_SHARE.comfortable)
    return 'It leaks {all}, {share} of the device’s rating: comfortable.';
  return share <= LEAKAGE_SHARE.most
    ? 'It leaks {all}, {share} of the device’s rating: just about the most that is usual.'
    : 'It leaks {all}, {share} of the device’s rating: it may trip for nothing. Ask an electrician for a device and a circuit made for drives.';
};

function answer({ spindle = 0, axes = 0, rest = 0, rating = 1 }: Values) {
  const leakages = [spindle, axes, rest];
  const share = residualCurrentMargin.compute({ leakages, rating });
  const earth = secondEarthShare.compute({ leakages });
  const shareOf = (each: number) => residualCurrentMargin.compute({ leakages: [each], rating });
  const all = spindle + axes + rest;
  return {
    say:
      tripSays(share) +
      (earth > 1
        ? ' One thin earth wire is not enough for it: a licensed electrician fits a second, or a thick one.'
        : ''),
    rows: [
      { id: 'all', label: 'All together', value: all, written: milliampere },
      { id: 'share', label: 'Of the device’s rating', value: share, written: percent },
      { id: 'earth', label: 'Of the limit for one earth wire', value: earth, written: percent },
    ],
    curves: [
      { name: 'share of the rating', points: curveOf(0, MOST, shareOf, 1) },
      { name: 'most that is usual', points: curveOf(0, MOST, () => LEAKAGE_SHARE.most, 1), broken: true },
    ],
    mark: [all, share],
  } as const;
}

const leak = { unit: 'A', written: milliampere, low: 0, step: 0.1 } as const;

/** Steady leakage of all that hangs on one residual-current device. */
export const leakage: WorkingFigure = {
  id: 'leakage',
  topic: 'motor-supply',
  question: 'Does the earth-leakage device stand all of it?',
  begin: 'Add up what filters and drives leak by their plates. Never lift an earth to quiet the device.',
  inputs: [
    { id: 'spindle', label: 'Spindle drive and its filter', ...leak, high: 10, example: 3.5 },
    { id: 'axes', label: 'Motor supplies and axis drives', ...leak, high: 10, example: 1.5 },
    { id: 'rest', label: 'Computer, lamp and the rest', ...leak, high: 5, example: 0.5 },
    {
      id: 'rating',
      label: 'Rating of the device',
      unit: 'A',
      written: milliampere,
      low: 5,
      high: 30,
      step: 1,
      example: 30,
      own: 'residual-device-rating',
    },
  ],
  across: { label: 'leakage, mA', written: milliampere },
  up: { label: 'of the device’s rating, %', written: percent },
  formulas: [residualCurrentMargin.id, secondEarthShare.id],
  answer,
};
