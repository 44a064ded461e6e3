/** The rooms of src and what each may import. A room may always import from itself. */

const GROUND = ['calc/core', 'calc/formulas', 'calc/subsystems'];

const PLANNING = [
  'calc/guide',
  'calc/facts',
  'calc/trade',
  'calc/measures',
  'calc/checks',
  'calc/findings',
  'calc/report',
  'calc/choices',
  'calc/design',
  'calc/settings',
  'calc/cost',
  'calc/schedule',
  'calc/worth',
  'calc/paths',
  'calc/why',
  'calc/why-totals',
];

/** What islands ask when somebody wants to know more than the report says. */
const ON_REQUEST = [
  'calc/why-number',
  'calc/buying',
  'calc/stage-notes',
  'calc/working',
  'calc/choosing',
  'calc/comparing',
  'calc/worst-builds',
  'calc/old-prices',
];
/** Sums of the book that a reader may move: formulas only, so that a page of the book loads nothing of the trade. */
const IN_THE_BOOK = 'calc/working-figures';

const CALC = [...GROUND, ...PLANNING, 'calc/evaluate', ...ON_REQUEST, IN_THE_BOOK];
const SHOWN_TO_ISLANDS = [
  'calc/core',
  'calc/guide',
  'calc/facts',
  'calc/evaluate',
  ...ON_REQUEST,
  'calc/report',
  'calc/trade',
  IN_THE_BOOK,
  'link',
  'export',
  'content',
];
const UNDER_PAGES = [...CALC, 'link', 'export', 'content', 'islands', 'styles'];

export const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'calc/core': [],
  'calc/formulas': ['calc/core'],
  'calc/subsystems': ['calc/core', 'calc/formulas'],
  ...Object.fromEntries(PLANNING.map((room) => [room, [...GROUND, ...PLANNING]])),
  [IN_THE_BOOK]: ['calc/core', 'calc/formulas'],
  'calc/evaluate': [...GROUND, ...PLANNING],
  ...Object.fromEntries(ON_REQUEST.map((room) => [room, [...GROUND, ...PLANNING, 'calc/evaluate']])),
  link: [...CALC, 'content'],
  export: [...CALC, 'link', 'content'],
  content: ['calc/core', 'calc/guide', 'calc/facts'],
  styles: [],
  /** The worker that keeps the site on a device, and its list. Pages speak to it in messages only. */
  offline: [],
  islands: [...SHOWN_TO_ISLANDS, 'styles', 'shapes'],
  shapes: [],
  /** Figures that somebody printed: tests hold the formulas against them, and a page shows them. */
  printed: [],
  components: [...UNDER_PAGES, 'shapes', 'printed'],
  /** How the site is found and shown: what a page says of itself, its picture, the lists for searches. Run when it is built. */
  found: [...UNDER_PAGES, 'components', 'shapes'],
  layouts: [...UNDER_PAGES, 'components', 'found'],
  pages: [...UNDER_PAGES, 'components', 'layouts', 'printed'],
};

/** Files that stand outside the folder of their room, without their extension. */
export const LODGERS: Readonly<Record<string, string>> = {
  'components/lathe-shapes': 'shapes',
  'content.config': 'content',
  'calc/facts-lathe': 'calc/facts',
  'calc/facts-own': 'calc/facts',
  'calc/facts-slides': 'calc/facts',
  'calc/facts-turning': 'calc/facts',
  'calc/facts-work': 'calc/facts',
  'calc/facts-workshop': 'calc/facts',
  'calc/report-bill': 'calc/report',
  'calc/report-money': 'calc/report',
  '../tests/published/row': 'printed',
  '../tests/published/rows': 'printed',
};

export const PACKAGES_FOR_CALC: readonly string[] = ['decimal.js'];

/** Rooms that plain Node runs without a bundler: their relative imports carry the file's extension. */
export const RUN_BY_NODE = /^(calc|link|export|found|offline)\//;

/** What would make the same path give another report on another day or machine. */
export const IMPURE: Readonly<Record<string, RegExp>> = {
  'a clock': /\bDate\.now\b|\bnew Date\(\s*\)|\bDate\(\s*\)|\bperformance\b\./,
  chance: /\bMath\.random\b|\bcrypto\./,
  'a locale': /\bIntl\.|\.toLocale\w*\(|\.localeCompare\(/,
};
