// A whole design from a lathe and a few answers; what is not answered stands as the plan assumes it. An answer that the
// plan refuses is a fault of the test.
import { checksOf } from '../../../src/calc/checks.ts';
import type { Check } from '../../../src/calc/core/check.ts';
import type { SizeClass } from '../../../src/calc/core/machine.ts';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { designOf } from '../../../src/calc/design.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { currentEdition } from '../../../src/content/edition.ts';

export interface Given {
  readonly size?: SizeClass;
  readonly facts?: Readonly<Record<string, number>>;
  readonly answers?: Readonly<Record<string, string>>;
}

export function designed({ size = 'medium', facts = {}, answers = {} }: Given) {
  const machine = machineOf(size, facts);
  const listed = Object.fromEntries(
    Object.entries(answers).map(([decision, option]) => [decision, [option]]),
  );
  const path = { ...emptyPath(currentEdition.edition), size, facts, answers: listed };
  const look = designOf(planState(path, machine).state);
  for (const [decision, option] of Object.entries(answers)) {
    if (!look.chosen(decision, option)) throw new Error(`${decision} could not be answered with ${option}`);
  }
  const checks = new Map(checksOf(look).map((check) => [check.id, check]));
  return {
    /** A figure in SI; NaN where it does not arise, so that no comparison holds. */
    figure: (id: string): number => look.figure(id)?.value ?? Number.NaN,
    check: (id: string): Check => {
      const check = checks.get(id);
      if (!check) throw new Error(`the check ${id} does not arise`);
      return check;
    },
    checks: [...checks.values()],
  };
}
