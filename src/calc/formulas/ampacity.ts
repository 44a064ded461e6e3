import type { Formula } from '../core/formula.ts';

/** How a cable lies: as a cable in conduit or trunking, or fixed flat on a wall or plate. */
export type CableLay = 'conduit' | 'on-wall';

/**
 * Amperes that a PVC-insulated copper cable carries all day at 40 °C around it: IEC 60204-1 table 6, columns B2
 * (conduit) and C (on-wall). From 1.5 mm² up the figures round to those printed in a compressor maker's manual;
 * 0.75 and 1 mm² are quoted from memory.
 */
export const ampacityAt40: readonly { readonly area: number; readonly amperes: Record<CableLay, number> }[] =
  [
    { area: 0.75e-6, amperes: { conduit: 8.5, 'on-wall': 9.8 } },
    { area: 1e-6, amperes: { conduit: 10.1, 'on-wall': 11.7 } },
    { area: 1.5e-6, amperes: { conduit: 13.1, 'on-wall': 15.2 } },
    { area: 2.5e-6, amperes: { conduit: 17.4, 'on-wall': 21 } },
    { area: 4e-6, amperes: { conduit: 23, 'on-wall': 28 } },
    { area: 6e-6, amperes: { conduit: 30, 'on-wall': 36 } },
    { area: 10e-6, amperes: { conduit: 40, 'on-wall': 50 } },
    { area: 16e-6, amperes: { conduit: 54, 'on-wall': 66 } },
  ];

/**
 * The American counterpart: amperes by gauge at 30 °C, insulation for 60 °C, NFPA 79 table 12.5.1, quoted from
 * memory. Editions differ: a figure to plan with, never a rule.
 */
export const ampacityByGauge: Readonly<Record<number, number>> = {
  24: 2,
  22: 3,
  20: 5,
  18: 7,
  16: 10,
  14: 20,
  12: 25,
  10: 30,
};

/** Amperes that a cable carries at 40 °C by the largest listed area that it reaches; NaN below the table. */
export const conductorAmpacity: Formula<{ area: number; lay: CableLay }> = {
  id: 'conductor-ampacity',
  label: 'Current a cable may carry',
  equation: 'current = figure of the table for this area and lay, at 40 °C',
  tex: 'I_z = I_{\\text{table}}(A, \\text{lay})',
  inputs: { area: 'm²', lay: 'case' },
  unit: 'A',
  source: { ref: 'IEC 60204-1', at: 'table 6, columns B2 and C, PVC copper at 40 °C' },
  valid: { area: [0.75e-6, 16e-6] },
  compute: ({ area, lay }) =>
    ampacityAt40.findLast((size) => size.area <= area * (1 + 1e-9))?.amperes[lay] ?? Number.NaN,
};

/** What the current at 40 °C is multiplied by in a warmer or cooler place; NaN above 70 °C, where PVC ends. */
export const ampacityAmbientFactor: Formula<{ ambient: number }> = {
  id: 'ampacity-ambient-factor',
  label: 'Cable current in a warmer place',
  equation: 'factor = √((70 − ambient) ÷ 30)',
  tex: 'f = \\sqrt{\\frac{70 - T}{30}}',
  inputs: { ambient: '°C' },
  unit: '1',
  source: { ref: 'IEC 60204-1', at: 'annex, correction for ambient temperature, 70 °C PVC' },
  valid: { ambient: [30, 60] },
  compute: ({ ambient }) => Math.sqrt((70 - ambient) / 30),
};

export const ampacityFormulas = [conductorAmpacity, ampacityAmbientFactor] as const;
