import type { Formula } from '../core/formula.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** A device that cuts off when current goes astray to earth. Amperes. */
export interface ResidualDevice {
  readonly id: '5mA' | '30mA';
  readonly rating: number;
  /** It may already trip from here. */
  readonly mayTripFrom: number;
  readonly source: string;
}

/** The American outlet that protects people, and the usual device in a distribution board elsewhere. */
export const residualDevices: readonly ResidualDevice[] = [
  {
    id: '5mA',
    rating: 0.005,
    mayTripFrom: 0.004,
    source: 'NEC definition of a class A ground-fault device, citing UL 943: trips at 6 mA, not below 4 mA',
  },
  { id: '30mA', rating: 0.03, mayTripFrom: 0.015, source: 'IEC 61008: may trip from half of its rating' },
];

/** Share of its rating that steady leakage may take, so that the device does not trip for nothing. Common practice. */
export const LEAKAGE_SHARE = { comfortable: 0.3, most: 0.4 } as const;

/** Amperes to earth above which one thin earth wire is not enough. */
export const SECOND_EARTH_CURRENT = 0.0035;

/** Steady leakage as a share of what the device trips at: 1 is all of it. */
export const residualCurrentMargin: Formula<{ leakages: readonly number[]; rating: number }> = {
  id: 'residual-current-margin',
  label: 'Leakage against the residual-current device',
  equation: 'share = sum of leakages ÷ rating',
  tex: 's = \\frac{\\sum I_i}{I_{\\Delta n}}',
  inputs: { leakages: 'A', rating: 'A' },
  unit: '1',
  source: { ref: 'common practice, no source', at: 'steady leakage below 30 to 40 % of the rating' },
  valid: { rating: [0.005, 0.03] },
  unverified:
    'The leakages come from the plates and data sheets of filters and drives; no published worked sum is known.',
  compute: ({ leakages, rating }) => sum(leakages) / rating,
};

/**
 * Leakage as a share of the 3.5 mA above which the earth needs a second conductor, or a fixed connection with 10 mm²
 * of copper. Above 1: ask a licensed electrician.
 */
export const secondEarthShare: Formula<{ leakages: readonly number[] }> = {
  id: 'second-earth-share',
  label: 'Leakage against the limit for one earth wire',
  equation: 'share = sum of leakages ÷ 3.5 mA',
  tex: 's = \\frac{\\sum I_i}{3.5\\,\\mathrm{mA}}',
  inputs: { leakages: 'A' },
  unit: '1',
  source: {
    ref: 'IEC 61800-5-1, as quoted in two drive makers’ manuals (Danfoss FC 100 design manual, Vacon NX)',
    at: 'touch current above 3.5 mA: 10 mm² of copper or a second protective conductor',
  },
  valid: {},
  unverified: 'The limit is a rule, printed without a worked sum.',
  compute: ({ leakages }) => sum(leakages) / SECOND_EARTH_CURRENT,
};

export const leakageFormulas = [residualCurrentMargin, secondEarthShare] as const;
