import type { Check } from '../../calc/core/check.ts';

/** A check as a dimension line: where the limits stand and where the value lies, in px of a drawing `WIDTH` wide. */
export interface LimitLayout {
  readonly from: number;
  readonly to: number;
  /** The line goes on past this end: there is no limit there. */
  readonly isOpen: boolean;
  readonly value: number;
}

export const WIDTH = 112;
const [LEFT, RIGHT] = [5, WIDTH - 5];
/** Where the limit stands: most of the drawing is for what is allowed, and some for what is not. */
const [MOST, LEAST, LOW, HIGH] = [76, 40, 36, 76];

const held = (x: number): number => Math.min(RIGHT, Math.max(LEFT, x));

/** Undefined where a figure is missing or a scale from nothing to the limit would say nothing. */
export function layoutLimit({ sense, value, limit, limitLow }: Check): LimitLayout | undefined {
  if (!value || !limit || !(limit.value > 0) || !Number.isFinite(value.value)) return undefined;
  const part = value.value / limit.value;
  if (sense === 'at-most')
    return { from: LEFT, to: MOST, isOpen: false, value: held(LEFT + part * (MOST - LEFT)) };
  if (sense === 'at-least')
    return { from: LEAST, to: RIGHT, isOpen: true, value: held(LEFT + part * (LEAST - LEFT)) };
  if (!limitLow || !(limit.value > limitLow.value)) return undefined;
  const along = (value.value - limitLow.value) / (limit.value - limitLow.value);
  return { from: LOW, to: HIGH, isOpen: false, value: held(LOW + along * (HIGH - LOW)) };
}
