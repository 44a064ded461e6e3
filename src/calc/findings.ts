import { compile, type State } from './choices/state.ts';
import { all, any, decisionsIn, is, not } from './core/condition.ts';
import type { Effect, Rule } from './core/rule.ts';
import type { Finding } from './report.ts';
import { rules } from './trade.ts';

const levels: readonly Finding['level'][] = ['stop', 'look', 'note'];

type Suggestion = Extract<Effect, { kind: 'suggests' }>;

const suggestionsOf = (rule: Rule): Suggestion[] =>
  rule.then.filter((effect): effect is Suggestion => effect.kind === 'suggests');

const findingOf = (rule: Rule, level: Finding['level']): Finding => {
  const suggested = suggestionsOf(rule).map(({ decision }) => decision);
  return {
    id: rule.id,
    level,
    say: rule.say,
    decisions: [...new Set([...suggested, ...decisionsIn(rule.when)])],
  };
};

const warnings = rules.flatMap((rule) =>
  rule.then.flatMap((effect) =>
    effect.kind === 'warns' ? [{ when: compile(rule.when), finding: findingOf(rule, effect.level) }] : [],
  ),
);

/** A rule that only suggests speaks while nothing of what it suggests is chosen. */
const suggestions = rules.flatMap((rule) => {
  const suggested = suggestionsOf(rule);
  if (suggested.length === 0 || rule.then.some(({ kind }) => kind === 'warns')) return [];
  const taken = any(...suggested.map(({ decision, options }) => is(decision, ...options)));
  return [{ when: compile(all(rule.when, not(taken))), finding: findingOf(rule, 'note') }];
});

/** What the trade says about this set of choices, the gravest first. */
export function findingsOf(state: State): Finding[] {
  return [...warnings, ...suggestions]
    .filter(({ when }) => when(state))
    .map(({ finding }) => finding)
    .sort((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level));
}
