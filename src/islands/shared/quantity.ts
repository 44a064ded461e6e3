import type { Quantity, Unit } from '../../calc/core/quantity.ts';
import { exactMoney, lengthText, plain, significant, type Units } from './format.ts';

/** A figure with its unit, whatever it came from. */
export type Figure = Pick<Quantity, 'value' | 'unit'>;

interface Written {
  readonly unit: string;
  /** How many of the reader's unit make one of SI. */
  readonly per: number;
}

const MM_PER_M = 1000;
const IN_PER_M = 1 / 0.0254;
/** Above this a speed in m/s is that of a cut, below it that of a slide; screens use different units for the two. */
const CUTTING_FROM = 0.3;

/** Units that are written otherwise than in SI, whatever lengths are written in. */
const FIXED: Partial<Record<Unit, Written>> = {
  'rev/s': { unit: 'rpm', per: 60 },
  'm²': { unit: 'mm²', per: 1e6 },
  'm³/s': { unit: 'cm³/min', per: 6e7 },
  '1/m': { unit: 'per mm', per: 1 / 1000 },
  'kg·m²': { unit: 'kg·cm²', per: 1e4 },
  'N/m': { unit: 'N/µm', per: 1e-6 },
  'kg/m³': { unit: 'kg/dm³', per: 1e-3 },
  Pa: { unit: 'N/mm²', per: 1e-6 },
  H: { unit: 'mH', per: 1000 },
  F: { unit: 'µF', per: 1e6 },
  rad: { unit: '°', per: 180 / Math.PI },
  ohm: { unit: 'Ω', per: 1 },
  rev: { unit: 'turns', per: 1 },
  'h/week': { unit: 'h a week', per: 1 },
  '1': { unit: '', per: 1 },
};

function lengthy(value: number, unit: Unit, units: Units): Written | undefined {
  const [name, per] = units === 'inch' ? ['in', IN_PER_M] : ['mm', MM_PER_M];
  if (unit === 'm/rev') return { unit: `${name}/rev`, per };
  if (unit === 'm/s²') return { unit: `${name}/s²`, per };
  if (unit !== 'm/s') return undefined;
  if (Math.abs(value) < CUTTING_FROM) return { unit: `${name}/min`, per: per * 60 };
  return units === 'inch' ? { unit: 'ft/min', per: 60 / 0.3048 } : { unit: 'm/min', per: 60 };
}

function small(value: number, unit: Unit): Written | undefined {
  const size = Math.abs(value);
  if (unit === 'A' && size < 0.1) return { unit: 'mA', per: 1000 };
  if (unit === 's' && size < 0.1) return { unit: 'ms', per: 1000 };
  if (unit === 'm³/s' && size >= 1e-4) return { unit: 'm³/h', per: 3600 };
  if (unit === 'Hz') return often(size);
  return undefined;
}

/** How often in a second, without a row of noughts. */
function often(size: number): Written {
  if (size < 1000) return { unit: 'a second', per: 1 };
  return size < 1e6 ? { unit: 'thousand a second', per: 1e-3 } : { unit: 'million a second', per: 1e-6 };
}

/** Three figures, with as many decimals as they take: 0.0429, 13.1, 5,000. */
export const threeFigures = (n: number): string => figures(n, 3);

function figures(n: number, digits: number): string {
  const size = Math.abs(n);
  if (size >= 1e7) return powerOfTen(n, digits);
  const below = size > 0 && size < 1 ? Math.floor(Math.log10(size)) : 0;
  return plain(significant(n, digits), Math.min(9, digits - 1 - below));
}

const SUPERSCRIPT = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** "1.23 × 10⁹": a figure too long to read digit by digit. */
function powerOfTen(n: number, digits: number): string {
  const [mantissa = '0', exponent = '0'] = n.toExponential(digits - 1).split('e');
  const raised = String(Math.abs(Number(exponent))).replace(
    /\d/g,
    (digit) => SUPERSCRIPT[Number(digit)] ?? '',
  );
  return `${plain(Number(mantissa), digits - 1)} × 10${Number(exponent) < 0 ? '⁻' : ''}${raised}`;
}

const weeksText = (n: number): string => `${threeFigures(n)} ${n === 1 ? 'week' : 'weeks'}`;

/** A worked-out figure in the unit a reader knows: three figures, lengths in millimetres or inches. */
export function quantityText({ value, unit }: Figure, units: Units): string {
  if (unit === 'm') return lengthText(significant(value, 3), units);
  if (unit === '$') return exactMoney(Math.abs(value) < 10 ? value : Math.round(value));
  if (unit === 'week') return weeksText(value);
  const written = lengthy(value, unit, units) ?? small(value, unit) ?? FIXED[unit] ?? { unit, per: 1 };
  return `${threeFigures(value * written.per)} ${written.unit}`.trim().replace(' °', '°');
}

/** The same in SI, as a formula takes it: "0.004 m", "1.23 × 10⁻⁶ m²". */
export function siText({ value, unit }: Figure, digits = 4): string {
  const size = Math.abs(value);
  const figure = size !== 0 && size < 1e-3 ? powerOfTen(value, digits) : figures(value, digits);
  if (unit === '$') return exactMoney(value);
  return unit === '1' ? figure : `${figure} ${unit}`;
}
