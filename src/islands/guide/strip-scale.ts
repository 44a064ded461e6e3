import type { OptionEffect, QuestionEffects } from '../../calc/choosing.ts';
import { niceStep } from '../shared/scale.ts';
import { risksSaid } from './effect-words.ts';

/** The scale of a question: how much lies between its zero and either end. Undefined: nothing moves. */
export interface StripScale {
  readonly money: number | undefined;
  readonly hours: number | undefined;
  readonly risks: number | undefined;
}

/** Width of the drawn axis, px; the zero stands in the middle. */
export const AXIS = 166;
/** Room beside the outermost end, so that its tick is whole. */
const EDGE = 3;

const outermost = (scale: readonly [number, number]): number | undefined => {
  const end = Math.max(Math.abs(scale[0]), Math.abs(scale[1]));
  return end > 0 ? niceStep(end) : undefined;
};

/** Ways of twenty that the risks named in a strip add and take away. */
export function risksBy({ moves }: OptionEffect): { readonly up: number; readonly down: number } {
  const by = risksSaid(moves?.risks ?? []).map(({ before, after }) => Math.round(after) - Math.round(before));
  const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0);
  return { up: sum(by.filter((n) => n > 0)), down: -sum(by.filter((n) => n < 0)) };
}

/** One scale for all options of a question, the same to both sides of its zero. */
export function scaleOf({ moneyScale, hoursScale, options }: QuestionEffects): StripScale {
  const most = Math.max(...options.map(risksBy).flatMap(({ up, down }) => [up, down]));
  return {
    money: outermost(moneyScale),
    hours: outermost(hoursScale),
    risks: most > 0 ? Math.max(10, most) : undefined,
  };
}

/** Where a difference stands on the axis, px. */
export const placeOn = (value: number, end: number): number => AXIS / 2 + (value / end) * (AXIS / 2 - EDGE);
