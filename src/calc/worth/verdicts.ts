import { compile, type State, type Test } from '../choices/state.ts';
import { is } from '../core/condition.ts';
import type { Verdict } from '../report.ts';
import { rules } from '../trade.ts';

const weights: Readonly<Record<string, Verdict['weight']>> = {
  'do-not-convert': 'do-not',
  'alternatives-first': 'think',
  'get-help-first': 'think',
  'thread-synchroniser': 'think',
  'convert-conditional': 'go',
};

/** Where the path already is what the sentence advises, it fits instead of asking to think again. */
const followed: Readonly<Record<string, Test>> = {
  'thread-synchroniser': compile(is('control', 'thread-synchroniser')),
};

const weightOf = (id: string, state: State): Verdict['weight'] =>
  followed[id]?.(state) ? 'go' : (weights[id] ?? 'think');

const speaking = rules.flatMap((rule) =>
  rule.then.flatMap((effect) =>
    effect.kind === 'verdict' ? [{ id: effect.verdict, say: rule.say, when: compile(rule.when) }] : [],
  ),
);

/** What the answers say about converting at all; the gravest first. Empty when they say nothing either way. */
export function verdictsOf(state: State): Verdict[] {
  const order: readonly Verdict['weight'][] = ['do-not', 'think', 'go'];
  return speaking
    .filter(({ when }) => when(state))
    .map(({ id, say }) => ({ id, say, weight: weightOf(id, state) }))
    .sort((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight));
}
