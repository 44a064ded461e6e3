import type { Status } from '../choices/choose.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { decisionById } from '../guide.ts';
import { effectsOf, type QuestionStrips } from './effects.ts';

/** How much a question carries: the typical reach of its allowed answers, in dollars and hours. */
export interface Carried {
  readonly decision: string;
  readonly status: Status;
  readonly money: number;
  readonly hours: number;
}

/** An hour weighs ten dollars here; it only orders a list. */
const DOLLARS_PER_HOUR = 10;

const weightOf = ({ money, hours }: Carried): number => money + DOLLARS_PER_HOUR * hours;

/** A choice with one answer: what the owner is and has, and what takes several answers, is no matter of search. */
function isChoice(id: string): boolean {
  const decision = decisionById(id);
  return decision?.place === 'guide' && !decision.many && decision.open === 'options';
}

function reachOf({ options }: QuestionStrips, kind: 'money' | 'hours'): number {
  const by = [0, ...options.filter(({ allowed }) => allowed).map((option) => option[kind].p50)];
  return Math.max(...by) - Math.min(...by);
}

/** Questions that a search may answer anew, those that carry most first. */
export const carriedBy = (path: Path, book: PriceBook): Carried[] =>
  effectsOf(path, book)
    .filter(({ decision, status }) => status !== 'not-asked' && isChoice(decision))
    .map((strips) => ({
      decision: strips.decision,
      status: strips.status,
      money: reachOf(strips, 'money'),
      hours: reachOf(strips, 'hours'),
    }))
    .sort((a, b) => weightOf(b) - weightOf(a));
