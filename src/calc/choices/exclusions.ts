import { decisionsIn } from '../core/condition.ts';
import type { Decision } from '../core/decision.ts';
import type { Effect, Rule } from '../core/rule.ts';
import { decisions } from '../guide.ts';
import { rules } from '../trade.ts';
import { compile, decisionPosition, maskOf, type State, type Test } from './state.ts';

/** A combination that the trade forbids: while `when` holds, the decision may not take an option of `forbidden`. */
export interface Exclusion {
  readonly rule: Rule;
  readonly when: Test;
  readonly position: number;
  readonly forbidden: number;
  /** Positions of every decision that takes part, the target included. */
  readonly involved: readonly number[];
}

const everyOption = decisions.map((decision) => (1 << decision.options.length) - 1);

function fromEffect(rule: Rule, effect: Effect): Exclusion[] {
  if (effect.kind !== 'rulesOut' && effect.kind !== 'requires') return [];
  const position = decisionPosition(effect.decision);
  const named = maskOf(effect.decision, effect.options);
  const involved = [...new Set([position, ...decisionsIn(rule.when).map(decisionPosition)])];
  const forbidden = effect.kind === 'rulesOut' ? named : everyOption[position]! & ~named;
  return [{ rule, when: compile(rule.when), position, forbidden, involved }];
}

/** Every exclusion of the trade. */
export const exclusions: readonly Exclusion[] = rules.flatMap((rule) =>
  rule.then.flatMap((effect) => fromEffect(rule, effect)),
);

/** The exclusions that a decision takes part in, by its position. */
export const touching: readonly (readonly Exclusion[])[] = decisions.map((_, position) =>
  exclusions.filter((exclusion) => exclusion.involved.includes(position)),
);

export const isViolated = (exclusion: Exclusion, state: State): boolean =>
  (state.masks[exclusion.position]! & exclusion.forbidden) !== 0 && exclusion.when(state);

const asksNot: readonly (readonly { readonly rule: Rule; readonly when: Test }[])[] = decisions.map(
  (decision) =>
    rules
      .filter((rule) =>
        rule.then.some((effect) => effect.kind === 'asksNot' && effect.decisions.includes(decision.id)),
      )
      .map((rule) => ({ rule, when: compile(rule.when) })),
);

const askWhen: readonly (Test | undefined)[] = decisions.map((decision) =>
  decision.askWhen ? compile(decision.askWhen) : undefined,
);

/** Whether a question arises, given everything before it. */
export function isAsked(position: number, state: State): boolean {
  const own = askWhen[position];
  return (own === undefined || own(state)) && !asksNot[position]!.some(({ when }) => when(state));
}

/** The sentence of the rule that makes a question unnecessary, if it was a rule. */
export const whyNotAsked = (position: number, state: State): string =>
  asksNot[position]!.find(({ when }) => when(state))?.rule.say ??
  'It does not arise with your earlier answers.';

/** Positions of the questions whose being asked at all hangs on a decision, by its position. */
export const askedAfter: readonly (readonly number[])[] = decisions.map((decision) =>
  decisions.flatMap((other, at) => (asksIn(other).includes(decision.id) ? [at] : [])),
);

function asksIn(decision: Decision): string[] {
  const ruled = rules.filter((rule) =>
    rule.then.some((effect) => effect.kind === 'asksNot' && effect.decisions.includes(decision.id)),
  );
  return [...(decision.askWhen ? [decision.askWhen] : []), ...ruled.map(({ when }) => when)].flatMap(
    decisionsIn,
  );
}
