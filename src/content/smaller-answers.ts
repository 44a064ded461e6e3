import type { Band } from '../calc/core/band.ts';

/** What may do instead of a conversion. */
export interface SmallerAnswer {
  readonly name: string;
  /** US dollars for a small lathe, tools to fit it at hand. */
  readonly price: Band;
  /** Hours to fit it and get used to it; left out where we have no figure. */
  readonly hours?: Band;
}

/** Planning figures from memory of the trade, not quotations, of the same month as the newest edition of prices. */
export const smallerAnswers = {
  readout: { name: 'Digital readout on both slides', price: [110, 230, 650], hours: [4, 8, 16] },
  changeGears: { name: 'Change gears for another pitch', price: [30, 80, 200], hours: [1, 4, 12] },
  dies: { name: 'Dies with a holder', price: [40, 150, 450] },
} as const satisfies Readonly<Record<string, SmallerAnswer>>;
