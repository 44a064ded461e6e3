import type { Condition } from '../core/condition.ts';
import type { Machine } from '../core/machine.ts';
import { facts } from '../facts.ts';
import { decisions } from '../guide.ts';

/**
 * What is chosen and measured, in the form the rules run on: one bit mask of options for each decision
 * (zero: not asked), the figures of the machine in SI, and whether the owner gave them.
 */
export interface State {
  readonly machine: Machine;
  readonly masks: Int32Array;
  readonly figures: Float64Array;
  readonly known: Uint8Array;
  /** A worked-out figure by name, SI; asked for only after everything is chosen. */
  readonly measure: (id: string) => number;
}

export type Test = (state: State) => boolean;

const decisionAt = new Map(decisions.map((decision, at) => [decision.id, at]));
const factAt = new Map(facts.map((fact, at) => [fact.id, at]));

/** Position of a decision in guide order; throws on an unknown id, an author's mistake. */
export function decisionPosition(id: string): number {
  const at = decisionAt.get(id);
  if (at === undefined) throw new Error(`no decision has the id ${id}`);
  return at;
}

function factPosition(id: string): number {
  const at = factAt.get(id);
  if (at === undefined) throw new Error(`no figure of the lathe has the id ${id}`);
  return at;
}

const bits: readonly ReadonlyMap<string, number>[] = decisions.map(
  ({ options }) => new Map(options.map(({ id }, bit) => [id, 1 << bit])),
);

/** The bits of these options of a decision; throws on an unknown option id, an author's mistake. */
export function maskOf(decisionId: string, options: readonly string[]): number {
  const known = bits[decisionPosition(decisionId)]!;
  let mask = 0;
  for (const id of options) {
    const bit = known.get(id);
    if (bit === undefined) throw new Error(`decision ${decisionId} has no option ${id}`);
    mask |= bit;
  }
  return mask;
}

/** Option ids of a mask, in the order of the decision. */
export function optionsOf(position: number, mask: number): string[] {
  return decisions[position]!.options.filter((_, bit) => (mask >> bit) & 1).map((option) => option.id);
}

/** The first option chosen for a decision; undefined where it is not asked. */
export function chosenOption(state: State, decision: string): string | undefined {
  const at = decisionPosition(decision);
  const mask = state.masks[at]!;
  return mask === 0 ? undefined : decisions[at]!.options[31 - Math.clz32(mask & -mask)]!.id;
}

/** A fresh state: nothing chosen, figures from the machine. Measures answer `measure` once they are wanted. */
export function newState(machine: Machine, measure: (state: State, id: string) => number): State {
  const figures = Float64Array.from(facts, (fact) => machine.facts[fact.id]?.value ?? Number.NaN);
  const known = Uint8Array.from(facts, (fact) =>
    machine.facts[fact.id]?.origin.kind === 'answered' ? 1 : 0,
  );
  return unchosen({ machine, figures, known }, measure);
}

/** A fresh state on figures that are already there: nothing chosen. */
export function unchosen(
  { machine, figures, known }: Pick<State, 'machine' | 'figures' | 'known'>,
  measure: (state: State, id: string) => number,
): State {
  const masks = new Int32Array(decisions.length);
  const state: State = { machine, masks, figures, known, measure: (id) => measure(state, id) };
  return state;
}

/** A condition as a function of the state. Throws on an unknown id, an author's mistake. */
export function compile(condition: Condition): Test {
  switch (condition.kind) {
    case 'always':
      return () => true;
    case 'is':
      return touches(condition.decision, maskOf(condition.decision, condition.options));
    case 'only':
      return keepsTo(condition.decision, maskOf(condition.decision, condition.options));
    case 'asked':
      return touches(condition.decision, -1);
    case 'not':
      return negate(compile(condition.of));
    case 'all':
      return every(condition.of.map(compile));
    case 'any':
      return some(condition.of.map(compile));
    default:
      return compileFigure(condition);
  }
}

function touches(decision: string, wanted: number): Test {
  const at = decisionPosition(decision);
  return (state) => (state.masks[at]! & wanted) !== 0;
}

function keepsTo(decision: string, wanted: number): Test {
  const at = decisionPosition(decision);
  return (state) => state.masks[at] !== 0 && (state.masks[at]! & ~wanted) === 0;
}

const negate =
  (test: Test): Test =>
  (state) =>
    !test(state);

const every =
  (tests: readonly Test[]): Test =>
  (state) => {
    for (let at = 0; at < tests.length; at += 1) if (!tests[at]!(state)) return false;
    return true;
  };

const some =
  (tests: readonly Test[]): Test =>
  (state) => {
    for (let at = 0; at < tests.length; at += 1) if (tests[at]!(state)) return true;
    return false;
  };

function compileFigure(condition: Extract<Condition, { kind: 'below' | 'known' | 'measure' }>): Test {
  if (condition.kind === 'measure') {
    const { measure, above } = condition;
    if (typeof above === 'number') return (state) => state.measure(measure) > above;
    const at = factPosition(above.fact);
    return (state) => state.measure(measure) > above.times * state.figures[at]!;
  }
  const at = factPosition(condition.fact);
  if (condition.kind === 'known') return (state) => state.known[at] === 1;
  const { value } = condition;
  return (state) => state.figures[at]! < value;
}
