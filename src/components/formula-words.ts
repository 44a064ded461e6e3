import type { PublishedRow } from '../../tests/published/row.ts';
import type { AnyFormula } from '../calc/formulas/registry.ts';
import { siText } from '../islands/shared/quantity.ts';

/** Longer lists than this are counted: a page has no room for every price of an index. */
const LONG = 8;

const unitOf = (unit: string): string =>
  unit === '1' ? 'a plain number' : unit === 'case' ? 'a case' : unit;

const figure = (value: number, unit: string): string =>
  siText({ value, unit: (unit === 'case' ? '1' : unit) as Parameters<typeof siText>[0]['unit'] }, 7);

function said(value: unknown, unit: string): string {
  if (typeof value === 'number') return figure(value, unit);
  if (!Array.isArray(value)) return String(value);
  const plain = value.every((each): each is number => typeof each === 'number');
  return plain && value.length <= LONG
    ? value.map((each) => figure(each, unit)).join('; ')
    : `${value.length} of them`;
}

/** "loadFactor 1.2, meanForce 420 N": what a printed figure was worked out from. */
export const inputsText = ({ inputs }: PublishedRow, formula: AnyFormula): string =>
  Object.entries(inputs)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `${name} ${said(value, formula.inputs[name])}`)
    .join(', ');

/** "dynamicRating in N, loadFactor a plain number; the result in h". */
export function unitsText({ inputs, unit }: AnyFormula): string {
  const each = Object.entries<string>(inputs).map(([name, of]) =>
    /^a /.test(unitOf(of)) ? `${name} ${unitOf(of)}` : `${name} in ${unitOf(of)}`,
  );
  return `${each.join(', ')}; the result ${unit === '1' ? 'a plain number' : `in ${unit}`}`;
}

/** "loadFactor from 1 to 2": the range the source speaks of; an empty text where it names none. */
export const validText = ({ valid, inputs }: AnyFormula): string =>
  Object.entries(valid as Readonly<Record<string, readonly [number, number]>>)
    .map(([name, [low, high]]) => rangeText(name, low, high, inputs[name]))
    .join('; ');

function rangeText(name: string, low: number, high: number, unit: string): string {
  if (!Number.isFinite(high)) return `${name} from ${figure(low, unit)}`;
  if (!Number.isFinite(low)) return `${name} up to ${figure(high, unit)}`;
  return `${name} from ${figure(low, unit)} to ${figure(high, unit)}`;
}

/** Ours with two digits more than were printed, so that a reader sees how close it comes. */
export function oursText({ printed, ours }: PublishedRow): string {
  const digits = printed
    .replace(/e.*$/, '')
    .replace(/^[-0.]+/, '')
    .replace('.', '').length;
  const text = ours.toPrecision(Math.min(12, Math.max(1, digits) + 2));
  return text.replace('e+', ' × 10^').replace('e-', ' × 10^−');
}

export const printedText = ({ printed, unit }: PublishedRow): string =>
  `${printed.replace('e', ' × 10^').replace('^-', '^−')} ${unit === '1' ? '' : unit}`.trim();

export const provenanceText = ({ provenance, source }: PublishedRow): string =>
  `${source.ref}, ${source.at}; ${provenance === 'seen' ? 'read there' : 'quoted from memory'}`;
