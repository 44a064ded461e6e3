import { threadDepth, threadFeed, threadInfeed } from '../../src/calc/formulas/thread.ts';
import { type PublishedRow, row } from './row.ts';

/** Size, pitch in mm, minor diameter of the nut and root diameter of the bolt in mm. */
const standard: readonly (readonly [number, number, string, string])[] = [
  [6, 1, '4.917', '4.773'],
  [8, 1.25, '6.647', '6.466'],
  [10, 1.5, '8.376', '8.160'],
  [12, 1.75, '10.106', '9.853'],
  [16, 2, '13.835', '13.546'],
];

const standardRows = standard.flatMap(([size, pitch, nut, bolt]) =>
  (
    [
      ['inside', nut, 'minor diameter'],
      ['outside', bolt, 'root diameter'],
    ] as const
  ).map(([side, printed, name]) =>
    row(threadDepth, {
      what: `M${size}: the source prints the ${name}`,
      source: { ref: 'ISO 724', at: 'basic dimensions' },
      provenance: 'memory',
      inputs: { pitch: pitch / 1000, side },
      as: (depth) => size - 2000 * depth,
      printed,
      unit: 'mm',
    }),
  ),
);

const outsideDepths: readonly (readonly [number, string])[] = [
  [1, '0.64'],
  [1.25, '0.80'],
  [1.5, '0.92'],
  [1.75, '1.10'],
  [2, '1.26'],
  [2.5, '1.57'],
  [3, '1.87'],
];

const outsideRows = outsideDepths.map(([pitch, printed]) =>
  row(threadDepth, {
    what: `outside thread, ${pitch} mm pitch, total of all passes`,
    source: { ref: 'Sumitomo catalogue 2019-20', at: 'p. 404, passes for outside threads' },
    provenance: 'seen',
    inputs: { pitch: pitch / 1000, side: 'outside' },
    as: (depth) => depth * 1000,
    printed,
    unit: 'mm',
    looser: {
      by: 0.042,
      because: 'totals of the maker run 0 to 4 % over the depth of the profile',
    },
  }),
);

/** Pitch in mm and the infeed of each pass in mm; the table cuts to 0.57735 of the pitch. */
const passes: readonly (readonly [number, readonly string[]])[] = [
  [1, ['.224', '.185', '.168']],
  [1.5, ['.237', '.196', '.179', '.138', '.116']],
  [1.75, ['.277', '.228', '.209', '.161', '.135']],
  [2, ['.283', '.234', '.214', '.164', '.138', '.122']],
  [3, ['.387', '.320', '.293', '.225', '.189', '.167', '.151']],
];

const lastPass = {
  by: 0.0067,
  because: 'the maker trims the last pass so that the rounded column adds up to 0.577',
};

const infeedRows = passes.flatMap(([pitch, column]) =>
  column.map((printed, at) =>
    row(threadInfeed, {
      what: `${pitch} mm pitch, pass ${at + 1} of ${column.length}`,
      source: { ref: 'Dormer Pramet catalogue 2021-22', at: 'p. 311, infeed of each pass' },
      provenance: 'seen',
      inputs: { depth: (0.57735 * pitch) / 1000, passes: column.length },
      as: (infeeds) => infeeds[at]! * 1000,
      printed: `0${printed}`,
      unit: 'mm',
      ...(pitch === 1 && at === 2 ? { looser: lastPass } : {}),
    }),
  ),
);

const feedRows = [
  row(threadFeed, {
    what: '20 threads an inch at 500 turns a minute',
    source: { ref: 'Industrial Monitor Direct, article on threading with an encoder', at: 'worked example' },
    provenance: 'seen',
    inputs: { pitch: 0.0254 / 20, speed: 500 / 60 },
    as: (speed) => (speed * 60) / 0.0254,
    printed: '25',
    unit: 'in/min',
  }),
  row(threadFeed, {
    what: '0.2 mm a turn at 1,350 turns a minute',
    source: {
      ref: 'Mitsubishi Materials, technical information, formulas for drilling',
      at: 'worked example',
    },
    provenance: 'seen',
    inputs: { pitch: 0.0002, speed: 1350 / 60 },
    as: (speed) => speed * 60_000,
    printed: '270',
    unit: 'mm/min',
  }),
];

export const threadRows: readonly PublishedRow[] = [
  ...standardRows,
  ...outsideRows,
  ...infeedRows,
  ...feedRows,
];
