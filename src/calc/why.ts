import { outsideRange, plainOf } from './core/formula.ts';
import type { OriginInput, Quantity, Unit } from './core/quantity.ts';
import { type StepId, steps } from './core/steps.ts';
import { figureById } from './design.ts';
import { factById } from './facts.ts';
import { formulaById } from './formulas/registry.ts';
import { decisionById } from './guide.ts';

/** Why a number is what it is, down to the answers. Plain data: shown, printed and tested alike. */
export interface Explanation {
  /** What the number is, in words. */
  readonly title: string;
  readonly value: number;
  readonly unit: Unit;
  readonly origin: Quantity['origin']['kind'];
  /** One sentence: where it comes from. */
  readonly say: string;
  /** Where to change it: a figure of the lathe page, or a question of the guide. */
  readonly change?: { readonly fact: string } | { readonly decision: string };
  /** The law it was worked out with. */
  readonly law?: {
    readonly id: string;
    readonly equation: string;
    readonly source?: { readonly ref: string; readonly at: string };
    /** Why no published figure stands beside the law. */
    readonly unverified?: string;
    /** Inputs that lie outside what the source speaks of, by name. */
    readonly outside: readonly string[];
  };
  readonly inputs: readonly ExplainedInput[];
}

export interface ExplainedInput {
  /** Name of the input in the equation. */
  readonly name: string;
  /** A named case instead of figures: how a screw is held, which metal. */
  readonly word?: string;
  readonly parts: readonly Explanation[];
}

const titleOf = ({ of }: Quantity, fallback: string): string => {
  if (of && 'fact' in of) return factById(of.fact)?.name ?? fallback;
  return of ? figureById(of.figure).label : fallback;
};

/** Explains a quantity and everything it was made from. `title` names it where it carries no name of its own. */
export function explain(quantity: Quantity, title: string): Explanation {
  const { value, unit, origin, of } = quantity;
  const base = { title: titleOf(quantity, title), value, unit, origin: origin.kind };
  const fact = of && 'fact' in of ? { change: of } : {};
  switch (origin.kind) {
    case 'answered':
      return { ...base, ...fact, say: 'You measured or typed it.', inputs: [] };
    case 'assumed':
      return { ...base, ...fact, say: `Assumed: ${origin.why}.`, inputs: [] };
    case 'published':
      return { ...base, say: `Published: ${origin.source}.`, inputs: [] };
    case 'chosen':
      return {
        ...base,
        say: `Follows from the answer “${optionLabel(origin.decision, origin.option)}”: ${origin.why}.`,
        change: { decision: origin.decision },
        inputs: [],
      };
    default:
      return { ...base, ...lawOf(origin.formula, origin.inputs), inputs: inputsOf(origin.inputs) };
  }
}

const optionLabel = (decision: string, option: string): string =>
  decisionById(decision)?.options.find(({ id }) => id === option)?.label ?? option;

const inputsOf = (inputs: Readonly<Record<string, OriginInput>>): ExplainedInput[] =>
  Object.entries(inputs).map(([name, input]) =>
    typeof input === 'string'
      ? { name, word: input, parts: [] }
      : { name, parts: [input].flat().map((quantity: Quantity) => explain(quantity, wordsOf(name))) },
  );

/** An input's name as words: "beltEfficiency" → "belt efficiency". */
const wordsOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

function lawOf(id: string, inputs: Readonly<Record<string, OriginInput>>): Pick<Explanation, 'say' | 'law'> {
  const step = Object.hasOwn(steps, id) ? steps[id as StepId] : undefined;
  if (step) return { say: `${step.label}.`, law: { id, equation: step.equation, outside: [] } };
  const formula = formulaById(id);
  const figures = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, plainOf(input)]));
  const { equation, source, unverified } = formula;
  return {
    say: `${formula.label}.`,
    law: {
      id,
      equation,
      source,
      ...(unverified === undefined ? {} : { unverified }),
      outside: outsideRange(formula, figures),
    },
  };
}
