import type { Bar, ChoiceSwing, Swings, UnknownSwing } from '../../../calc/choosing.ts';
import { decisionById, optionById } from '../../../calc/guide.ts';
import { toShown } from '../../shared/currency.ts';
import { hours, hoursMark, money, moneyMark, weeks, weeksMark } from '../../shared/format.ts';

/** What a swing is told in. */
export type Kind = keyof Swings['now'];

interface About {
  readonly name: string;
  /** As drawn on a scale: money in the shown currency. */
  readonly shown: (n: number) => number;
  readonly mark: (n: number) => string;
  /** A figure as the calculation gives it, in words. */
  readonly say: (n: number) => string;
}

export const KINDS: Readonly<Record<Kind, About>> = {
  money: { name: 'Money', shown: toShown, mark: moneyMark, say: money },
  hours: { name: 'Hours', shown: (n) => n, mark: hoursMark, say: hours },
  weeks: {
    name: 'Weeks without the lathe',
    shown: (n) => n,
    mark: (n) => `${weeksMark(n)} wk`,
    say: (n) => (Math.abs(n) < 0.05 ? '0 weeks' : weeks(n)),
  },
};

/** "+$1,600", "−9 h", "0". */
export function saySwing(kind: Kind, by: number): string {
  const text = KINDS[kind].say(by);
  if (!/[1-9]/.test(text)) return '0';
  return by > 0 ? `+${text}` : text;
}

/** A mark on a scale of changes: "+$500", "as now". */
export function markOfChange(kind: Kind, by: number): string {
  if (by === 0) return 'as now';
  return `${by > 0 ? '+' : ''}${KINDS[kind].mark(by)}`;
}

const widthOf = ({ least, most }: Bar): number => most.by - least.by;

const moves = (kind: Kind, { least, most, blockedLeast, blockedMost }: Bar): boolean =>
  [least, most, blockedLeast, blockedMost].some((end) => end && saySwing(kind, end.by) !== '0');

/** Choices that move this kind at all, the widest first. */
export const choicesIn = (kind: Kind, choices: readonly ChoiceSwing[]): ChoiceSwing[] =>
  choices
    .filter((choice) => moves(kind, choice[kind]))
    .toSorted((a, b) => widthOf(b[kind]) - widthOf(a[kind]));

const reach = ({ low, high }: UnknownSwing['money']): number => high - low;

/** Unknowns that move this kind at all, the widest first. */
export const unknownsIn = (kind: Kind, unknowns: readonly UnknownSwing[]): UnknownSwing[] =>
  unknowns
    .filter((each) => saySwing(kind, reach(each[kind])) !== '0')
    .toSorted((a, b) => reach(b[kind]) - reach(a[kind]));

/** How wide the middle 16 of 20 ways are now and once it is known; undefined where that narrows nothing. */
export function narrowsText(kind: Kind, { narrows }: UnknownSwing): string | undefined {
  const { now, then } = narrows[kind];
  const { say } = KINDS[kind];
  if (say(now) === say(then)) return undefined;
  return `narrows 16 of 20 ways from ${say(now)} apart to ${say(then)}`;
}

/** The label of an option of a question, small at its start. */
export function optionName(decision: string, option: string): string {
  const about = decisionById(decision);
  return (about && optionById(about, option)?.label) || option;
}
