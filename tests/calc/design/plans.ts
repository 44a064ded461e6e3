// Whole designs for tests: a plan from answers and figures, then what the trade works out from it.
import { checksOf } from '../../../src/calc/checks.ts';
import type { Check } from '../../../src/calc/core/check.ts';
import type { Look } from '../../../src/calc/core/figure.ts';
import type { SizeClass } from '../../../src/calc/core/machine.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { designOf } from '../../../src/calc/design.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { currentEdition } from '../../../src/content/edition.ts';

type Given = { readonly [decision: string]: readonly string[] };

/**
 * The design of a lathe with these answers and measured figures (SI); the rest as the product assumes it. Throws where
 * the plan refuses an answer: the test would then judge another machine.
 */
export function designWith(size: SizeClass, facts: Record<string, number>, answers: Given): Look {
  const path = { edition: currentEdition.edition, size, facts, answers, owned: [] };
  const look = designOf(planState(path, machineOf(size, facts)).state);
  for (const [decision, options] of Object.entries(answers))
    if (!look.chosen(decision, ...options)) throw new Error(`${decision} refuses ${options.join()}`);
  return look;
}

/** The value of a figure that must arise. */
export function figureOf(look: Look, figure: string): number {
  const value = look.figure(figure)?.value;
  if (value === undefined) throw new Error(`${figure} does not arise`);
  return value;
}

/** A check that must arise. */
export function checkOf(look: Look, id: string): Check {
  const check = checksOf(look).find((each) => each.id === id);
  if (!check) throw new Error(`${id} does not arise`);
  return check;
}
