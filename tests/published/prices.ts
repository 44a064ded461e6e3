import { dollars } from '../../src/calc/core/money.ts';
import { chargeableWeight, sparesChance, sparesFor } from '../../src/calc/formulas/buying.ts';
import {
  escalate,
  type ImportCharges,
  importCharges,
  priceBeforeTax,
  roundMoney,
  salesTax,
} from '../../src/calc/formulas/prices.ts';
import { type PublishedRow, row } from './row.ts';

const leaflet = 'US Bureau of Labor Statistics, Using the Consumer Price Index for Escalation';
const escalateRows = (
  [
    ['1989, page 5', 'seen', 113.8, 118.5, '4.1'],
    ['later edition', 'memory', 129.9, 136.0, '4.7'],
  ] as const
).map(([at, provenance, indexThen, indexNow, printed]) =>
  row(escalate, {
    what: `index from ${indexThen} to ${indexNow}: per cent added to 100`,
    source: { ref: leaflet, at },
    provenance,
    inputs: { amount: dollars(100), indexThen, indexNow },
    as: (amount) => amount.minus(100).toNumber(),
    printed,
    unit: '%',
  }),
);

const textbook = {
  source: { ref: 'OpenStax Contemporary Mathematics, module m00058', at: 'sales tax, worked examples' },
  provenance: 'seen',
  unit: '$',
} as const;
const taxRows = (
  [
    [34.88, 0.0825, '2.88', '37.76'],
    [499, 0.0881, '43.96', '542.96'],
  ] as const
).flatMap(([price, rate, tax, total]) => {
  const inputs = { amount: dollars(price), rate };
  const what = `${price} at ${(rate * 100).toFixed(2)} per cent`;
  const exact = salesTax.compute(inputs);
  return [
    row(salesTax, { ...textbook, what, inputs, printed: tax }),
    row(salesTax, {
      ...textbook,
      what: `${what}, price and tax`,
      inputs,
      as: (due) => due.plus(price).toNumber(),
      printed: total,
    }),
    row(roundMoney, {
      ...textbook,
      what: `tax on ${what}`,
      inputs: { amount: exact, places: 2 },
      printed: tax,
    }),
  ];
});

const backwards = { ...textbook, inputs: { total: dollars(467.64), rate: 0.0825 } };
const beforeTaxRows = [
  row(priceBeforeTax, { ...backwards, what: '467.64 with 8.25 per cent in it', printed: '432.00' }),
  row(priceBeforeTax, {
    ...backwards,
    what: '467.64 with 8.25 per cent in it, the tax',
    as: (price) => dollars(467.64).minus(price).toNumber(),
    printed: '35.64',
  }),
];

type Figure = keyof ImportCharges;
const shipment = {
  goods: dollars(10_000),
  freight: dollars(100),
  insurance: dollars(50),
  localCharges: dollars(500),
  dutyRate: 0.1,
  taxRate: 0.2,
};
/** The source gives the duty as a sum, 4.02 on 115. */
const parcel = {
  goods: dollars(80),
  freight: dollars(35),
  insurance: dollars(0),
  localCharges: dollars(0),
  dutyRate: 4.02 / 115,
  taxRate: 0.175,
};
const customsRows = (
  [
    ['langdonsystems.com', shipment, 'dutyBase', '10150'],
    ['langdonsystems.com', shipment, 'duty', '1015'],
    ['langdonsystems.com', shipment, 'taxBase', '11665'],
    ['wedelivertheworld.co.uk', parcel, 'taxBase', '119.02'],
    ['wedelivertheworld.co.uk', parcel, 'tax', '20.83'],
    ['wedelivertheworld.co.uk', parcel, 'charges', '24.85'],
  ] as const satisfies readonly (readonly [string, typeof shipment, Figure, string])[]
).map(([ref, inputs, figure, printed]) =>
  row(importCharges, {
    what: `goods of ${inputs.goods}, ${figure}`,
    source: { ref, at: 'worked example of import charges' },
    provenance: 'seen',
    inputs,
    as: (charges) => charges[figure].toNumber(),
    printed,
    unit: 'currency',
  }),
);

const POUND = 0.45359237;
const INCH = 0.0254;
const boxRows = [
  ...(
    [
      ['wikiHow', [10, 15, 20], 166, '18.07'],
      ['mozula.com', [12, 20, 16], 194, '19.8'],
      ['mozula.com', [12, 20, 16], 166, '23.1'],
    ] as const
  ).map(([ref, sides, divisor, printed]) => {
    const [length, width, height] = sides;
    return row(chargeableWeight, {
      what: `${sides.join(' × ')} in, divided by ${divisor}`,
      source: { ref, at: 'volumetric weight, worked example' },
      provenance: 'seen',
      inputs: {
        weight: 0,
        length: length * INCH,
        width: width * INCH,
        height: height * INCH,
        density: POUND / (divisor * INCH ** 3),
      },
      as: (kilograms) => kilograms / POUND,
      printed,
      unit: 'lb',
    });
  }),
  row(chargeableWeight, {
    what: '40 × 40 × 50 cm, divided by 4000',
    source: { ref: 'Carriers’ text on volumetric weight', at: 'metric example' },
    provenance: 'seen',
    inputs: { weight: 0, length: 0.4, width: 0.4, height: 0.5, density: 250 },
    printed: '20',
    unit: 'kg',
  }),
];

const library = (name: string, version: string) => ({
  source: { ref: `@stdlib/stats-base-dists-negative-binomial-${name} ${version}`, at: 'printed examples' },
  provenance: 'seen' as const,
  unit: '1',
});
const lastRows = (
  [
    [5, 20, 0.8, '0.617'],
    [21, 20, 0.5, '0.622'],
    [5, 10, 0.4, '0.034'],
    [0, 10, 0.9, '0.349'],
  ] as const
).map(([broken, holes, survives, printed]) =>
  row(sparesChance, {
    ...library('cdf', '0.2.3'),
    what: `at most ${broken} broken in ${holes} holes, each try good at ${survives}`,
    inputs: { holes, breakChance: 1 - survives, tools: broken + 1 },
    printed,
  }),
);
/**
 * k breakages or fewer before n holes are done is k or fewer broken in n + k tries: a printed binomial table checks it.
 */
const binomialRows = (
  [
    [20, 0.41, 12, '0.9738', (chance: number) => chance],
    [150, 0.09, 10, '0.1987', (chance: number) => chance],
    [150, 0.09, 25, '0.0009', (chance: number) => 1 - chance],
    [15, 0.281, 5, '0.2246', (chance: number) => 1 - chance],
    [100, 0.03, 4, '0.8179', (chance: number) => chance],
  ] as const
).map(([tries, breakChance, broken, printed, as]) =>
  row(sparesChance, {
    what: `${broken} or fewer of ${tries} tries, each with ${breakChance}${as(0) === 0 ? '' : '; the chance of more'}`,
    source: { ref: 'OpenStax Introductory Statistics', at: 'modules m46950 and m46961, binomial examples' },
    provenance: 'seen',
    inputs: { holes: tries - broken, breakChance, tools: broken + 1 },
    as,
    printed,
    unit: '1',
  }),
);
const haveRows = (
  [
    [0.9, 20, 0.2, '106'],
    [0.9, 20, 0.8, '8'],
    [0.5, 10, 0.4, '14'],
  ] as const
).map(([confidence, holes, survives, printed]) =>
  row(sparesFor, {
    ...library('quantile', '0.2.2'),
    what: `${holes} holes, each try good at ${survives}, confidence ${confidence}: breakages to allow for`,
    inputs: { holes, breakChance: 1 - survives, confidence },
    as: (tools) => tools - 1,
    printed,
  }),
);

export const priceRows: readonly PublishedRow[] = [
  ...escalateRows,
  ...taxRows,
  ...beforeTaxRows,
  ...customsRows,
];
export const buyingRows: readonly PublishedRow[] = [...boxRows, ...lastRows, ...binomialRows, ...haveRows];
