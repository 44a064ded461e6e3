import { compile, type State, type Test } from '../choices/state.ts';
import type { Condition } from '../core/condition.ts';
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

function amount({ qty }: Need, state: State, machine: Machine): number {
  if (typeof qty === 'number') return qty;
  if (typeof qty === 'function') return qty(machine);
  const figure = state.measure(qty.figure);
  return figure > 0 ? Math.ceil(figure) : 0;
}

const isSummed: readonly boolean[] = parts.map((part) => part.combine === 'sum');

/** What the needs that hold ask for: together, or as many as the greediest of them. */
function asked(needs: readonly CompiledNeed[], summed: boolean, state: State, machine: Machine): number {
  let total = 0;
  for (let at = 0; at < needs.length; at += 1) {
    const { need, when } = needs[at]!;
    if (!when(state)) continue;
    const qty = amount(need, state, machine);
    total = summed ? total + qty : Math.max(total, qty);
  }
  return total;
}

/** How many of the part at one position this path needs; never below zero, whatever asks for it and however often. */
export function quantityAt(at: number, state: State, machine: Machine): number {
  const wants = asked(wanted[at]!, isSummed[at]!, state, machine);
  return wants > 0 ? Math.max(0, wants - asked(unwanted[at]!, true, state, machine)) : 0;
}

/** How many of each part this path needs, by position. */
export function quantities(state: State, machine: Machine): Float64Array {
  const result = new Float64Array(parts.length);
  for (let at = 0; at < parts.length; at += 1) result[at] = quantityAt(at, state, machine);
  return result;
}

const kept: readonly (readonly CompiledNeed[])[] = parts.map(({ keep = [] }) =>
  keep.map((need) => ({ need, when: compile(need.when) })),
);

const counting = (at: number): readonly CompiledNeed[] => [...wanted[at]!, ...unwanted[at]!, ...kept[at]!];

/** Every condition that decides how many of a part are bought, spares among them, by position. */
export const conditionsOfPart: readonly (readonly Condition[])[] = parts.map((_, at) =>
  counting(at).map(({ need }) => need.when),
);

/** Figures of the design that say how many of a part are bought, by position. */
export const figuresOfPart: readonly (readonly string[])[] = parts.map((_, at) =>
  counting(at).flatMap(({ need: { qty } }) => (typeof qty === 'object' ? [qty.figure] : [])),
);

/** Units of a part kept as spares on top of the need. */
export const sparesOf = (at: number, state: State, machine: Machine): number =>
  kept[at]!.length === 0 ? 0 : asked(kept[at]!, true, state, machine);

/** Why they are kept, each reason once. */
export const sparesWhy = (state: State, at: number): string[] => [
  ...new Set(kept[at]!.filter(({ when }) => when(state)).map(({ need }) => need.why)),
];

/** The reasons for a line, in the owner's words, each once. */
export function reasons(state: State, at: number): string[] {
  return [...new Set(wanted[at]!.filter(({ when }) => when(state)).map(({ need }) => need.why))];
}
