import { checksOf } from './checks.ts';
import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import type { Quantity } from './core/quantity.ts';
import { planState } from './cost/ways.ts';
import { designOf } from './design.ts';
import { evaluate } from './evaluate.ts';
import { machineOf } from './facts.ts';
import { hasMeasure } from './measures.ts';
import { type Explanation, explain } from './why.ts';
import { explainRisk, explainTotal, type TotalId } from './why-totals.ts';

export type { ExplainedInput, Explanation } from './why.ts';
export type { TotalId } from './why-totals.ts';

/** A number that somebody points at: a design figure, one side of a check, a total or a risk. */
export type Asked =
  | { readonly kind: 'figure'; readonly id: string }
  | { readonly kind: 'check'; readonly id: string; readonly side: 'value' | 'limit' | 'limitLow' }
  | { readonly kind: 'total'; readonly id: TotalId }
  | { readonly kind: 'risk'; readonly id: string };

const lookOf = (path: Path) => designOf(planState(path, machineOf(path.size, path.facts)).state);

/** Value and unit of figures of the design and of the lathe by id. */
export type DesignFigures = Readonly<Record<string, Pick<Quantity, 'value' | 'unit'>>>;

/** Figures of a path by id, SI; one that does not arise there, or still needs a figure, is left out. Throws on an unknown id. */
export function designFigures(path: Path, ids: readonly string[]): DesignFigures {
  const look = lookOf(path);
  return Object.fromEntries(
    ids.flatMap((id) => {
      const found = hasMeasure(id) ? look.figure(id) : look.fact(id);
      return found ? [[id, { value: found.value, unit: found.unit }] as const] : [];
    }),
  );
}

/**
 * Why a number is what it is, worked out when it is asked for. Undefined where the number does not arise on this path
 * or still needs a figure. Throws only on an author's mistake.
 */
export function whyNumber(path: Path, book: PriceBook, asked: Asked): Explanation | undefined {
  if (asked.kind === 'total') return explainTotal(evaluate(path, book), asked.id);
  if (asked.kind === 'risk') {
    const risk = evaluate(path, book).risks.find(({ id }) => id === asked.id);
    return risk && explainRisk(risk);
  }
  const look = lookOf(path);
  if (asked.kind === 'figure') {
    const value = look.figure(asked.id);
    return value && explain(value, asked.id);
  }
  const check = checksOf(look).find(({ id }) => id === asked.id);
  const value = check?.[asked.side];
  return value && explain(value, asked.side === 'value' ? check.label : `Limit: ${check.label}`);
}
