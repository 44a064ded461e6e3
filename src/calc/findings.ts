import { compile, type State } from './choices/state.ts';
import { decisionsIn } from './core/condition.ts';
import type { Finding } from './report.ts';
import { rules } from './trade.ts';

const levels: readonly Finding['level'][] = ['stop', 'look', 'note'];

const warnings = rules.flatMap((rule) =>
  rule.then.flatMap((effect) => {
    if (effect.kind !== 'warns') return [];
    const suggested = rule.then.flatMap((each) => (each.kind === 'suggests' ? [each.decision] : []));
    const decisions = [...new Set([...suggested, ...decisionsIn(rule.when)])];
    return [
      { when: compile(rule.when), finding: { id: rule.id, level: effect.level, say: rule.say, decisions } },
    ];
  }),
);

/** What the trade says about this set of choices, the gravest first. */
export function findingsOf(state: State): Finding[] {
  return warnings
    .filter(({ when }) => when(state))
    .map(({ finding }) => finding)
    .sort((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level));
}
