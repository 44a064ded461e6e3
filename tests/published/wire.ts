import { ampacityAmbientFactor, type CableLay, conductorAmpacity } from '../../src/calc/formulas/ampacity.ts';
import {
  conductorTemperatureFactor,
  voltageDrop,
  wireArea,
  wireDiameter,
  wireResistance,
} from '../../src/calc/formulas/wire.ts';
import { type PublishedRow, row } from './row.ts';

const copperTable = {
  ref: 'United States copper wire table, as reprinted at wp.1728.org',
  at: 'bare wire at 20 °C',
};
const gaugeArea = (gauge: number): number => wireArea.compute({ diameter: wireDiameter.compute({ gauge }) });

/** Gauge, diameter in mm, ohm per 1,000 ft and ohm per km as the table prints them. */
const table: readonly (readonly [number, string, string, string])[] = [
  [12, '2.0523', '1.59', '5.21'],
  [14, '1.6281', '2.53', '8.28'],
  [16, '1.2903', '4.02', '13.17'],
  [18, '1.0236', '6.39', '20.94'],
  [20, '0.8128', '10.15', '33.29'],
  [22, '0.6452', '16.14', '52.94'],
  [24, '0.5105', '25.67', '84.20'],
  [26, '0.4039', '40.81', '133.86'],
  [28, '0.3200', '64.90', '212.87'],
];

const diameterRows = table.map(([gauge, printed]) =>
  row(wireDiameter, {
    what: `gauge ${gauge}`,
    source: copperTable,
    provenance: 'seen',
    inputs: { gauge },
    as: (metres) => metres * 1000,
    printed,
    unit: 'mm',
    looser: { by: 0.004, because: 'the table rounds to 0.0001 in before it turns inches into millimetres' },
  }),
);

const resistanceRows = table.flatMap(([gauge, , perThousandFeet, perKilometre]) => [
  row(wireResistance, {
    what: `gauge ${gauge}, 1,000 ft`,
    source: copperTable,
    provenance: 'seen',
    inputs: { area: gaugeArea(gauge), length: 304.8, temperature: 20 },
    printed: perThousandFeet,
    unit: 'ohm',
    looser: { by: 0.001, because: 'the table rounds the wire to 0.1 thousandth of an inch first' },
  }),
  row(wireResistance, {
    what: `gauge ${gauge}, 1 km`,
    source: copperTable,
    provenance: 'seen',
    inputs: { area: gaugeArea(gauge), length: 1000, temperature: 20 },
    printed: perKilometre,
    unit: 'ohm',
    looser: { by: 0.001, because: 'the table works it out from its rounded ohms per 1,000 ft' },
  }),
]);

const navy = {
  ref: 'US Navy, NEETS module 4 (public domain)',
  at: 'assignment question 1-12, table at 25 °C',
};
const navyRows = (
  [
    [12, 2500, '4.05'],
    [7, 6000, '3.05'],
  ] as const
).map(([gauge, feet, printed]) =>
  row(wireResistance, {
    what: `gauge ${gauge}, ${feet} ft at 25 °C`,
    source: navy,
    provenance: 'seen',
    inputs: { area: gaugeArea(gauge), length: feet * 0.3048, temperature: 25 },
    printed,
    unit: 'ohm',
  }),
);

const factorRows = (
  [
    [5, '1.064'],
    [30, '0.962'],
    [50, '0.893'],
    [75, '0.820'],
    [100, '0.758'],
  ] as const
).map(([temperature, printed]) =>
  row(conductorTemperatureFactor, {
    what: `conductor at ${temperature} °C`,
    source: {
      ref: 'IEC 60228, as reprinted by a cable maker (uecables.com)',
      at: 'temperature correction factors',
    },
    provenance: 'seen',
    inputs: { temperature },
    printed,
    unit: '1',
  }),
);

const areaRow = row(wireArea, {
  what: 'gauge 12, 2.053 mm',
  source: {
    ref: 'OpenStax University Physics volume 2, module m58731',
    at: 'worked example, current density',
  },
  provenance: 'seen',
  inputs: { diameter: 2.053e-3 },
  as: (area) => area * 1e6,
  printed: '3.31',
  unit: 'mm²',
});

const dropRow = row(voltageDrop, {
  what: '10 A over 100 ft of gauge 10 and back, at the 25 °C of its 1.02 ohm per 1,000 ft',
  source: {
    ref: 'The Engineering ToolBox, Electric Circuits Voltage Drop',
    at: 'example, power line of 100 ft',
  },
  provenance: 'seen',
  inputs: { current: 10, length: 30.48, area: gaugeArea(10), temperature: 25, circuit: 'dc' },
  printed: '2.04',
  unit: 'V',
});

const carried: Readonly<Record<CableLay, readonly (readonly [number, string])[]>> = {
  conduit: [
    [1.5, '13'],
    [2.5, '17'],
    [4, '23'],
    [6, '30'],
    [10, '40'],
    [16, '54'],
  ],
  'on-wall': [
    [1.5, '15'],
    [2.5, '21'],
    [4, '28'],
    [6, '36'],
    [10, '50'],
    [16, '66'],
  ],
};

const ampacityRows = (['conduit', 'on-wall'] as const).flatMap((lay) =>
  carried[lay].map(([square, printed]) =>
    row(conductorAmpacity, {
      what: `${square} mm², ${lay === 'conduit' ? 'cable in conduit' : 'cable on a wall'}`,
      source: { ref: 'Atlas Copco, GA 7 VSD instruction book', at: 'page 92, cable currents at 40 °C' },
      provenance: 'seen',
      inputs: { area: square * 1e-6, lay },
      printed,
      unit: 'A',
    }),
  ),
);

const ambientRows = (
  [
    [30, '1.15'],
    [35, '1.08'],
    [40, '1.00'],
    [45, '0.91'],
    [50, '0.82'],
    [55, '0.71'],
    [60, '0.58'],
  ] as const
).map(([ambient, printed]) =>
  row(ampacityAmbientFactor, {
    what: `${ambient} °C around the cable`,
    source: { ref: 'Sieb & Meyer, SD2B drive system, hardware manual', at: 'page 68, 70 °C PVC' },
    provenance: 'seen',
    inputs: { ambient },
    printed,
    unit: '1',
  }),
);

export const wireRows: readonly PublishedRow[] = [
  ...diameterRows,
  ...resistanceRows,
  ...navyRows,
  ...factorRows,
  areaRow,
  dropRow,
  ...ampacityRows,
  ...ambientRows,
];
