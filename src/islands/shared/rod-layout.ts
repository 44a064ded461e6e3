import { niceScale, type Scale } from './scale.ts';

/** One washer: its value, its centre along the rod in px, its row in the pile (0 is on the rod). */
export interface Washer {
  value: number;
  x: number;
  row: number;
  past: boolean;
}

/** Everything a rod needs to be drawn. Lengths in px, values in the unit they came in. */
export interface RodLayout {
  mode: 'face' | 'edge';
  width: number;
  /** Width of a column of washers. */
  column: number;
  /** Height that one washer takes in its pile. */
  pitch: number;
  left: number;
  right: number;
  washers: Washer[];
  before: Washer[];
  /** Rows in the tallest pile; rows in the tallest pile of `before`. */
  tallest: number;
  tallestBefore: number;
  /** Left face of the collar, which is the limit; absent when there is no limit. */
  collarX?: number;
  /** Set when the limit lies so far off that it would squash the washers: the collar then stands at that end. */
  offScale?: 'left' | 'right';
  ticks: { value: number; x: number }[];
  /** The middle half of the washers. */
  half: { from: number; to: number; x1: number; x2: number };
  under: number;
  over: number;
}

export const COLLAR_WIDTH = 8;
const CLEAR = 2;
const EDGE_BELOW = 250;
const TICK_ROOM = 48;
/** Higher face-on piles would fill the page: the washers then lie edge-on. */
const HIGHEST_PILE = 8;

function columnOf(mode: RodLayout['mode'], width: number): number {
  if (mode === 'edge') return 10;
  return width < 400 ? 12 : 15;
}

/** Where the washers within the limit end and the ones past it begin. */
interface Fences {
  under: number;
  over: number;
}

function pile(
  values: number[],
  at: (v: number) => number,
  size: number,
  limit: number,
  fences: Fences,
): Washer[] {
  const rows = new Map<number, number>();
  return values.map((value) => {
    const past = value > limit;
    const step = past
      ? Math.max(0, Math.floor((at(value) - fences.over) / size))
      : Math.max(0, Math.floor((fences.under - at(value)) / size));
    const x = past ? fences.over + (step + 0.5) * size : fences.under - (step + 0.5) * size;
    const row = rows.get(x) ?? 0;
    rows.set(x, row + 1);
    return { value, x, row, past };
  });
}

const highest = (washers: Washer[]) => washers.reduce((most, w) => Math.max(most, w.row + 1), 0);

function limitPlace(limit: number | undefined, low: number, high: number): 'on' | 'left' | 'right' | 'none' {
  if (limit === undefined || !Number.isFinite(limit)) return 'none';
  const reach = Math.max(high - low, Math.abs(high) * 0.25);
  if (limit > high + reach) return 'right';
  return limit < low - reach ? 'left' : 'on';
}

function middleHalf(values: number[], at: (v: number) => number): RodLayout['half'] {
  const from = values[Math.floor(values.length / 4)] ?? 0;
  const to = values[Math.ceil((values.length * 3) / 4) - 1] ?? from;
  return { from, to, x1: at(from), x2: at(to) };
}

function scaleFor(values: number[], limit: number | undefined, width: number): Scale {
  const all = limit === undefined ? values : [...values, limit];
  const most = Math.min(8, Math.max(3, Math.floor(width / TICK_ROOM)));
  return niceScale(Math.min(...all), Math.max(...all), most);
}

/** The bare rod: its ends, its scale and where the collar stands. */
function frameOf(shown: number[], limit: number | undefined, width: number, column: number) {
  const place = limitPlace(limit, Math.min(...shown), Math.max(...shown));
  const scale = scaleFor(shown, place === 'on' ? limit : undefined, width);
  const left = column + 6;
  const right = width - column * 1.5 - COLLAR_WIDTH - 4;
  const at = (v: number) => left + ((v - scale.from) / (scale.to - scale.from)) * (right - left);
  const stop = place === 'none' ? Number.POSITIVE_INFINITY : (limit as number);
  const collar = { on: at(stop), left: column / 2, right, none: right }[place];
  const marks: Pick<RodLayout, 'collarX' | 'offScale'> = {
    ...(place === 'none' ? {} : { collarX: collar }),
    ...(place === 'left' || place === 'right' ? { offScale: place } : {}),
  };
  const ticks = scale.ticks.map((value) => ({ value, x: at(value) }));
  return { left, right, at, stop, collar, marks, ticks };
}

function layoutMode(
  mode: RodLayout['mode'],
  values: number[],
  limit: number | undefined,
  width: number,
  before: number[],
): RodLayout {
  const column = columnOf(mode, width);
  const shown = values.length + before.length > 0 ? [...values, ...before] : [0];
  const { left, right, at, stop, collar, marks, ticks } = frameOf(shown, limit, width, column);
  const fences = { under: collar, over: collar + COLLAR_WIDTH + CLEAR };
  const washers = pile(values, at, column, stop, fences);
  const small = pile(before, at, 7, Number.POSITIVE_INFINITY, { under: right, over: right });
  const over = washers.filter((w) => w.past).length;
  const piles = { washers, before: small, tallest: highest(washers), tallestBefore: highest(small) };
  const counts = { under: values.length - over, over, half: middleHalf(values, at) };
  const pitch = mode === 'edge' ? 3.7 : column;
  return { mode, width, column, pitch, left, right, ticks, ...piles, ...counts, ...marks };
}

/**
 * Lays washers on a rod `width` px long: columns one washer wide, piled upward in order of value.
 * Columns are counted outward from the collar, so that none can straddle it; a value equal to the
 * limit is within it. `values` are sorted, low to high; `before` are the washers as they stood.
 * Returns places only; nothing is rounded and nothing is left out. No values give an empty rod.
 */
export function layoutRod(
  values: number[],
  limit: number | undefined,
  width: number,
  before: number[] = [],
): RodLayout {
  const mode = width < EDGE_BELOW ? 'edge' : 'face';
  const rod = layoutMode(mode, values, limit, width, before);
  return mode === 'face' && rod.tallest > HIGHEST_PILE
    ? layoutMode('edge', values, limit, width, before)
    : rod;
}
