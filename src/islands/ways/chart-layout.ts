import { niceScale, type Scale } from '../shared/scale.ts';

/** A way, or the plan in force, as the chart has it: an amount of the shown currency, and hours. */
export interface Spot {
  readonly money: number;
  readonly hours: number;
}

export interface Washer extends Spot {
  readonly x: number;
  readonly y: number;
  /** Nothing in the chart is both cheaper and quicker; the others are there for their strength. */
  readonly onLine: boolean;
}

export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  /** Edges of the field of the chart, px. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly across: readonly { value: number; x: number }[];
  readonly up: readonly { value: number; y: number }[];
  readonly washers: readonly Washer[];
  /** The plan in force; one far off would squash the ways, and stands at the edge. */
  readonly plan: Spot & { readonly x: number; readonly y: number; readonly isOff: boolean };
  /** The staircase through the washers on the line, as far as the limits: no way lies below or left of it. */
  readonly line: string;
  /** Where a limit stands; absent where none is set. One that lies off the chart stands at its edge. */
  readonly moneyLimit: number | undefined;
  readonly hoursLimit: number | undefined;
}

export interface Wanted {
  readonly ways: readonly Spot[];
  readonly plan: Spot;
  readonly money: number | undefined;
  readonly hours: number | undefined;
  readonly width: number;
}

const LEFT = 52;
const RIGHT = 26;
const TOP = 26;
const BOTTOM = 44;
const ROOM = 0.06;

const isBeaten = (spot: Spot, by: Spot): boolean =>
  by.money <= spot.money && by.hours <= spot.hours && (by.money < spot.money || by.hours < spot.hours);

/** What lies farther off than the ways are apart would squash them, and stands at the edge instead. */
const FAR = 1.2;

function scaleOver(ways: readonly number[], others: readonly (number | undefined)[], most: number): Scale {
  const [low, high] = [Math.min(...ways), Math.max(...ways)];
  const span = Math.max(high - low, high * 0.05);
  const near = others.filter(
    (other) => other !== undefined && other > low - FAR * span && other < high + FAR * span,
  ) as number[];
  const [from, to] = [Math.min(low, ...near), Math.max(high, ...near)];
  return niceScale(Math.max(0, from - ROOM * span), to + ROOM * span, most);
}

const clamped = (value: number, { from, to }: Scale): number => Math.min(to, Math.max(from, value));

function stairs(washers: readonly Washer[], top: number, right: number): string {
  const on = washers.filter(({ onLine }) => onLine).sort((a, b) => a.x - b.x || b.y - a.y);
  const [first, ...others] = on;
  if (!first) return '';
  const steps = others.map(({ x, y }) => `H${x}V${y}`).join('');
  return `M${first.x} ${top}V${first.y}${steps}H${right}`;
}

/** Money across, hours up. Draws only what it is given. */
export function layoutChart({ ways, plan, money, hours, width }: Wanted): ChartLayout {
  const height = Math.round(Math.min(400, Math.max(260, width * 0.68)));
  const [left, right, top, bottom] = [LEFT, width - RIGHT, TOP, height - BOTTOM];
  const across = scaleOver(
    ways.map((each) => each.money),
    [money, plan.money],
    width < 420 ? 4 : 7,
  );
  const up = scaleOver(
    ways.map((each) => each.hours),
    [hours, plan.hours],
    6,
  );
  const x = (value: number): number =>
    tidy(left + ((value - across.from) / (across.to - across.from)) * (right - left));
  const y = (value: number): number =>
    tidy(bottom - ((value - up.from) / (up.to - up.from)) * (bottom - top));
  const moneyLimit = money === undefined ? undefined : x(clamped(money, across));
  const hoursLimit = hours === undefined ? undefined : y(clamped(hours, up));
  const shown = { money: clamped(plan.money, across), hours: clamped(plan.hours, up) };
  const washers = ways.map(
    (way): Washer => ({
      ...way,
      x: x(way.money),
      y: y(way.hours),
      onLine: !ways.some((other) => isBeaten(way, other)),
    }),
  );
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    across: across.ticks.map((value) => ({ value, x: x(value) })),
    up: up.ticks.map((value) => ({ value, y: y(value) })),
    washers,
    plan: {
      ...plan,
      x: x(shown.money),
      y: y(shown.hours),
      isOff: shown.money !== plan.money || shown.hours !== plan.hours,
    },
    line: stairs(washers, hoursLimit ?? top, moneyLimit ?? right),
    moneyLimit,
    hoursLimit,
  };
}

const tidy = (px: number): number => Math.round(px * 10) / 10;
