import {
  type EndFixity,
  screwBucklingLoad,
  screwShortLimit,
  screwSpeedLimit,
  screwWhirlSpeed,
} from '../../src/calc/formulas/screw-limits.ts';
import { type PublishedRow, row } from './row.ts';

const whirlPage = { ref: 'MISUMI Economy catalogue 2022, ball screws', at: 'p. 991' } as const;
const bucklingPage = {
  ref: 'MISUMI mechanical components catalogue 2025, ball screws',
  at: 'p. 1676',
} as const;
const thkPage = { ref: 'THK general catalogue 514E, ball screws', at: 'p. A15-30' } as const;
const denso = { ref: 'Denso SMT7 manual, ball screws', at: 'p. 15' } as const;
const whitePaper = {
  ref: '10 steps to achieve optimal ball screw selection, white paper',
  at: 'critical speed',
};

/** The coefficient g of the printed rule n = g × d ÷ L² × 10⁷ (mm, turns a minute), from a screw of 10 mm and 1 m. */
const whirlCoefficient = (endFixity: EndFixity, printed: string, by: number): PublishedRow =>
  row(screwWhirlSpeed, {
    what: `coefficient of the printed rule, ${endFixity}`,
    source: whirlPage,
    provenance: 'seen',
    inputs: { rootDiameter: 0.01, length: 1, endFixity },
    as: (speed) => (speed * 60) / 100,
    printed,
    unit: '1',
    looser: { by, because: 'the source cuts its coefficient off instead of rounding it' },
  });

const whirlRows: readonly PublishedRow[] = [
  row(screwWhirlSpeed, {
    what: '12.5 mm root, 790 mm, one end fixed and one supported',
    source: whirlPage,
    provenance: 'seen',
    inputs: { rootDiameter: 0.0125, length: 0.79, endFixity: 'fixed-supported' },
    as: (speed) => speed * 60,
    printed: '3024',
    unit: 'turns a minute',
    looser: { by: 0.003, because: 'the source works with its coefficient rounded to 15.1' },
  }),
  whirlCoefficient('fixed-free', '3.4', 0.015),
  whirlCoefficient('supported', '9.7', 0.003),
  whirlCoefficient('fixed-supported', '15.1', 0.003),
  whirlCoefficient('fixed', '21.9', 0.003),
  row(screwWhirlSpeed, {
    what: '1 inch root, 100 inches, both ends supported; the source leaves the factor 0.8 out',
    source: whitePaper,
    provenance: 'seen',
    inputs: { rootDiameter: 0.0254, length: 2.54, endFixity: 'supported' },
    as: (speed) => speed / 0.8,
    printed: '8',
    unit: 'Hz',
  }),
  row(screwWhirlSpeed, {
    what: '1 inch root, 100 inches, both ends fixed; the source leaves the factor 0.8 out',
    source: whitePaper,
    provenance: 'seen',
    inputs: { rootDiameter: 0.0254, length: 2.54, endFixity: 'fixed' },
    as: (speed) => speed / 0.8,
    printed: '18',
    unit: 'Hz',
  }),
  row(screwWhirlSpeed, {
    what: 'least root for 3,000 turns a minute over 850 mm; the speed grows with the root',
    source: denso,
    provenance: 'seen',
    inputs: { rootDiameter: 0.001, length: 0.85, endFixity: 'fixed-supported' },
    as: (speed) => 3000 / (speed * 60),
    printed: '14.4',
    unit: 'mm',
    looser: { by: 0.007, because: 'the source works with its coefficient rounded to 15.1' },
  }),
];

const bucklingRows: readonly PublishedRow[] = [
  row(screwBucklingLoad, {
    what: '12.5 mm root, 820 mm, one end fixed and one supported',
    source: bucklingPage,
    provenance: 'seen',
    inputs: { rootDiameter: 0.0125, length: 0.82, endFixity: 'fixed-supported' },
    printed: '3630',
    unit: 'N',
    looser: { by: 0.003, because: 'the source works with its coefficient rounded to 10' },
  }),
  row(screwBucklingLoad, {
    what: '12.5 mm root, 1,100 mm, both ends fixed',
    source: {
      ref: 'THK general catalogue, ball screws',
      at: 'worked example, high-speed transfer equipment (horizontal)',
    },
    provenance: 'memory',
    inputs: { rootDiameter: 0.0125, length: 1.1, endFixity: 'fixed' },
    printed: '4040',
    unit: 'N',
    looser: {
      by: 0.005,
      because: 'the source works with its coefficient rounded to 20 and keeps three digits',
    },
  }),
  row(screwBucklingLoad, {
    what: 'coefficient of the printed rule P = m × d⁴ ÷ L² × 10⁴ (mm), one end fixed and one supported',
    source: bucklingPage,
    provenance: 'seen',
    inputs: { rootDiameter: 0.01, length: 1, endFixity: 'fixed-supported' },
    as: (load) => load / 100,
    printed: '10',
    unit: '1',
  }),
  row(screwBucklingLoad, {
    what: 'coefficient of the printed rule, both ends fixed',
    source: bucklingPage,
    provenance: 'seen',
    inputs: { rootDiameter: 0.01, length: 1, endFixity: 'fixed' },
    as: (load) => load / 100,
    printed: '20',
    unit: '1',
  }),
  row(screwBucklingLoad, {
    what: 'coefficient of the printed rule, one end fixed and one free',
    source: { ...thkPage, at: 'p. A15-30, equation (5)' },
    provenance: 'seen',
    inputs: { rootDiameter: 0.01, length: 1, endFixity: 'fixed-free' },
    as: (load) => load / 100,
    printed: '1.3',
    unit: '1',
    looser: { by: 0.045, because: 'the source rounds 1.25 up' },
  }),
  row(screwBucklingLoad, {
    what: 'coefficient of the rule in kilograms-force, both ends supported',
    source: { ref: 'HSK ball screw catalogue', at: 'section 01-04' },
    provenance: 'seen',
    inputs: { rootDiameter: 0.01, length: 1, endFixity: 'supported' },
    as: (load) => load / 9.80665 / 10,
    printed: '5.1',
    unit: '1',
  }),
];

export const screwLimitRows: readonly PublishedRow[] = [
  ...whirlRows,
  ...bucklingRows,
  row(screwShortLimit, {
    what: 'coefficient of the printed rule P = 116 × d² (mm)',
    source: { ...thkPage, at: 'p. A15-30, equation (6)' },
    provenance: 'seen',
    inputs: { rootDiameter: 0.001 },
    printed: '116',
    unit: 'N/mm²',
    looser: { by: 0.005, because: 'the source rounds its stress of 147 MPa' },
  }),
  row(screwSpeedLimit, {
    what: 'largest ball circle for 3,000 turns a minute at 70,000; the speed falls as the circle grows',
    source: denso,
    provenance: 'seen',
    inputs: { ballCircle: 0.001, dn: 70000 },
    as: (speed) => (speed * 60) / 3000,
    printed: '23.3',
    unit: 'mm',
  }),
];
