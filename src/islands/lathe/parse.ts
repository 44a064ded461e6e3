import type { Show } from '../../calc/facts.ts';
import type { Units } from '../shared/format.ts';
import { sizeOfUnit, unitOf } from './units.ts';

/** What a person typed, read: an SI value, nothing at all, or words that say what is wrong. */
export type Reading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'unreadable'; readonly say: string };

const LENGTHS: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in: 0.0254,
  inch: 0.0254,
  inches: 0.0254,
  '"': 0.0254,
  '″': 0.0254,
  ft: 0.3048,
};

/** The same lengths over a time: "mm/min", with the size of each. */
function over(
  lengths: Readonly<Record<string, number>>,
  time: string,
  seconds: number,
): Record<string, number> {
  return Object.fromEntries(
    Object.entries(lengths).map(([unit, size]) => [`${unit}/${time}`, size / seconds]),
  );
}

/** The same lengths over a turn; the plain length will do, because a feed is often said so. */
function perTurn(lengths: Readonly<Record<string, number>>): Record<string, number> {
  return { ...lengths, ...over(lengths, 'rev', 1), ...over(lengths, 'turn', 1) };
}

/** Units that a field understands, each with its size in SI; horsepower is the mechanical one of 746 W. */
const KNOWN: Readonly<Record<Show, Readonly<Record<string, number>>>> = {
  length: LENGTHS,
  pitch: LENGTHS,
  mass: { kg: 1, g: 0.001, t: 1000, lb: 0.45359237, lbs: 0.45359237 },
  power: { w: 1, kw: 1000, hp: 746 },
  speed: { rpm: 1 / 60, 'rev/min': 1 / 60, '/min': 1 / 60, 'rev/s': 1 },
  current: { a: 1, amp: 1, amps: 1 },
  frequency: { hz: 1 },
  hours: { h: 1, hour: 1, hours: 1 },
  share: { '%': 0.01 },
  count: {},
  feed: perTurn(LENGTHS),
  'slide-speed': { ...over(LENGTHS, 'min', 60), ...over(LENGTHS, 's', 1) },
  acceleration: { ...over(LENGTHS, 's²', 1), ...over(LENGTHS, 's2', 1) },
  force: { n: 1, kn: 1000, kgf: 9.80665, kg: 9.80665, lbf: 4.4482216, lb: 4.4482216 },
  torque: {
    ...Object.fromEntries(['n·m', 'nm', 'n.m', 'n m'].map((unit) => [unit, 1])),
    ...Object.fromEntries(['n·cm', 'ncm', 'n.cm'].map((unit) => [unit, 0.01])),
    ...Object.fromEntries(['oz·in', 'oz-in', 'ozin', 'oz in', 'oz.in'].map((unit) => [unit, 0.0070615518])),
  },
  'small-current': { ma: 0.001, a: 1, µa: 1e-6, ua: 1e-6 },
  voltage: { v: 1, volt: 1, volts: 1, kv: 1000 },
  inductance: { mh: 0.001, h: 1, µh: 1e-6, uh: 1e-6 },
  rate: { khz: 1000, hz: 1, mhz: 1e6 },
  resistance: { ohm: 1, ohms: 1, Ω: 1, ω: 1, kohm: 1000 },
  'surface-speed': { 'm/min': 1 / 60, 'm/s': 1, 'ft/min': 0.3048 / 60, sfm: 0.3048 / 60 },
  ratio: {},
};

const NUMBER = /^(\d+)\s+(\d+)\/(\d+)|^(\d+)\/(\d+)|^(\d[\d.,' \u00a0\u202f]*\d|\d|[.,]\d+)/;

/**
 * Reads a figure as people write it: "1,200", "9,5", "3/8 in", "1 1/2", "1.2k", "10 in", "2 hp", "8 tpi".
 * Without a unit the field's own counts. Never throws and never gives NaN, infinity or a value under zero.
 */
export function parseFigure(typed: string, show: Show, units: Units): Reading {
  const text = typed.trim().toLowerCase();
  if (text === '') return { kind: 'empty' };
  if (/^[-−–]\s*[\d.,]/.test(text)) return unreadable('A figure here cannot be under zero.');
  const found = NUMBER.exec(text);
  if (!found) return unreadable('We cannot find a number in this.');
  const number = numberIn(found);
  const size = sizeOf(text.slice(found[0].length).trim(), show, units, number);
  if (size === undefined) return unreadable(`We do not know this unit here. ${example(show, units)}`);
  const value = number * size;
  return Number.isFinite(value) ? { kind: 'value', value } : unreadable('This number is too large to use.');
}

const unreadable = (say: string): Reading => ({ kind: 'unreadable', say });

function example(show: Show, units: Units): string {
  const unit = unitOf(show, units);
  return unit ? `Type a number, or a number and “${unit}”.` : 'Type a plain number.';
}

function numberIn([, whole, top, bottom, onlyTop, onlyBottom, decimal]: RegExpExecArray): number {
  if (whole !== undefined) return Number(whole) + Number(top) / Number(bottom);
  if (onlyTop !== undefined) return Number(onlyTop) / Number(onlyBottom);
  return Number(withPoint(decimal ?? ''));
}

/**
 * Which mark is the decimal one: with both present the later; a single comma before exactly three digits, and any mark
 * that repeats, only separates thousands.
 */
function withPoint(written: string): string {
  const text = written.replace(/[' \u00a0\u202f]/g, '');
  const marks = text.replace(/\d/g, '');
  const last = marks[marks.length - 1];
  if (last === undefined) return text;
  const thousands =
    /^[1-9]\d{0,2}(,\d{3})+$/.test(text) || (marks.length > 1 && marks === last.repeat(marks.length));
  const at = text.lastIndexOf(last);
  const digits = (part: string) => part.replace(/[.,]/g, '');
  return thousands ? digits(text) : `${digits(text.slice(0, at)) || '0'}.${text.slice(at + 1)}`;
}

/**
 * Size in SI of what follows the number, a "k" for thousands included; undefined when it is not understood.
 * Threads to the inch count the other way round, so their size depends on the number itself.
 */
function sizeOf(rest: string, show: Show, units: Units, number: number): number | undefined {
  const own = sizeOfUnit(show, units);
  const unit = rest.replace(/\.$/, '');
  if (unit === '') return own;
  if (unit === 'k') return own * 1000;
  if (show === 'pitch' && unit === 'tpi') return number > 0 ? 0.0254 / (number * number) : undefined;
  if (show === 'hours' && /^(h|hours?)\s*(a|per|\/)\s*week$/.test(unit)) return 1;
  const known = KNOWN[show];
  return Object.hasOwn(known, unit) ? known[unit] : undefined;
}
