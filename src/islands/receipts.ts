import type { Decision } from '../calc/core/decision.ts';
import type { Answer, Path } from '../calc/core/path.ts';
import type { ChoiceView, Report } from '../calc/evaluate.ts';
import { optionById } from '../calc/guide.ts';

/** What one change moved: typical figures before and after, and the questions that changed along with it. */
export interface Moved {
  readonly moneyBefore: number;
  readonly moneyAfter: number;
  readonly hoursBefore: number;
  readonly hoursAfter: number;
  /** The twenty ways as they stood before. */
  readonly moneyTwenty: readonly number[];
  readonly hoursTwenty: readonly number[];
  /** Questions whose answer in the plan changed along with it, with the options that stand now. */
  readonly alsoSet: readonly { readonly decision: string; readonly options: readonly string[] }[];
  /** Questions that arise now, that no longer arise, and those to decide again. */
  readonly opened: readonly string[];
  readonly closed: readonly string[];
  readonly clashes: readonly string[];
}

/** One change by the owner, newest first in the list; `moved` follows when the figures are worked out. */
export interface Receipt {
  readonly number: number;
  /** The question that was answered; undefined for a figure, the size or something owned. */
  readonly decision?: string;
  readonly name: string;
  readonly saidBefore: string;
  readonly saidNow: string;
  readonly pathBefore: Path;
  readonly pathNow: Path;
  readonly moved?: Moved;
  /** The figures before or after this change failed, so that nobody knows what it moved. */
  readonly lost?: true;
}

/** An answer in words: option labels, "not sure yet" or "not answered". */
export function sayAnswer(decision: Decision, answer: Answer | undefined): string {
  if (answer === undefined) return 'not answered';
  if (answer.length === 0) return 'not sure yet';
  return answer.map((id) => optionById(decision, id)?.label ?? id).join('; ');
}

/** Compares two reports around a change of one question; the question itself is not listed. */
export function movedBetween(before: Report, after: Report, decision: string | undefined): Moved {
  const old = new Map(before.choices.map((choice) => [choice.decision, choice]));
  const pairs = after.choices
    .filter((choice) => choice.decision !== decision)
    .map((now) => ({ now, was: old.get(now.decision) }));
  const ids = (test: (now: ChoiceView, was: ChoiceView | undefined) => boolean): string[] =>
    pairs.filter(({ now, was }) => test(now, was)).map(({ now }) => now.decision);
  return {
    moneyBefore: before.money.p50,
    moneyAfter: after.money.p50,
    hoursBefore: before.hours.p50,
    hoursAfter: after.hours.p50,
    moneyTwenty: before.money.twenty,
    hoursTwenty: before.hours.twenty,
    alsoSet: pairs.filter(({ now, was }) => isAlsoSet(now, was)).map(({ now }) => now),
    opened: ids((now, was) => now.status !== 'not-asked' && was?.status === 'not-asked'),
    closed: ids((now, was) => now.status === 'not-asked' && was?.status !== 'not-asked'),
    clashes: ids((now, was) => now.status === 'clash' && was?.status !== 'clash'),
  };
}

function isAlsoSet(now: ChoiceView, was: ChoiceView | undefined): boolean {
  const bothAsked = now.status === 'open' && was?.status === 'open';
  return bothAsked && now.options.join() !== was.options.join();
}
