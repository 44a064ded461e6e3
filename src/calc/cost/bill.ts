import { compile, type State, type Test } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Need, Part } from '../core/part.ts';
import { parts, rules } from '../trade.ts';

interface CompiledNeed {
  readonly need: Need;
  readonly when: Test;
}

/** What a rule adds to or takes off a part, by part id. */
function fromRules(part: Part, kind: 'addsPart' | 'removesPart'): CompiledNeed[] {
  return rules.flatMap((rule) =>
    rule.then.flatMap((effect) =>
      effect.kind === kind && effect.part === part.id
        ? [{ need: { when: rule.when, qty: effect.qty, why: rule.say }, when: compile(rule.when) }]
        : [],
    ),
  );
}

const wanted: readonly (readonly CompiledNeed[])[] = parts.map((part) => [
  ...part.needs.map((need) => ({ need, when: compile(need.when) })),
  ...fromRules(part, 'addsPart'),
]);

const unwanted: readonly (readonly CompiledNeed[])[] = parts.map((part) => fromRules(part, 'removesPart'));

const amount = (need: Need, machine: Machine): number =>
  typeof need.qty === 'number' ? need.qty : need.qty(machine);

function together(part: Part, quantities: readonly number[]): number {
  if (part.combine === 'sum') return quantities.reduce((sum, qty) => sum + qty, 0);
  return Math.max(0, ...quantities);
}

/** How many of each part this path needs, by position; never below zero, whatever asks for it and however often. */
export function quantities(state: State, machine: Machine): Float64Array {
  return Float64Array.from(parts, (part, at) => {
    const asking = wanted[at]!.filter(({ when }) => when(state)).map(({ need }) => amount(need, machine));
    if (asking.length === 0) return 0;
    const less = unwanted[at]!.filter(({ when }) => when(state)).map(({ need }) => amount(need, machine));
    return Math.max(0, together(part, asking) - less.reduce((sum, qty) => sum + qty, 0));
  });
}

/** The reasons for a line, in the owner's words, each once. */
export function reasons(state: State, at: number): string[] {
  return [...new Set(wanted[at]!.filter(({ when }) => when(state)).map(({ need }) => need.why))];
}
