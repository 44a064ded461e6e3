import { decisions } from '../guide.ts';
import type { Block } from '../report.ts';
import type { Status } from './choose.ts';
import { isViolated, touching } from './exclusions.ts';
import type { State } from './state.ts';

/**
 * Options of a question that the owner's other answers or the lathe rule out. Assumed answers never block: they would
 * give way. `clash` names the answers to change; it is empty where only the lathe or the trade itself forbids.
 */
export function blocksOf(state: State, status: readonly Status[], at: number): Block[] {
  const decision = decisions[at]!;
  if (status[at] === 'not-asked') return [];
  const kept = state.masks[at]!;
  const settled = touching[at]!.filter((exclusion) =>
    exclusion.involved.every((other) => other === at || isFixed(status[other])),
  );
  if (settled.length === 0) return [];
  const blocks = decision.options.flatMap((option, bit) => {
    state.masks[at] = 1 << bit;
    const reasons = settled
      .filter((exclusion) => isViolated(exclusion, state))
      .map((exclusion) => ({
        rule: exclusion.rule.id,
        say: exclusion.rule.say,
        clash: exclusion.involved.filter((other) => other !== at).map((other) => decisions[other]!.id),
      }));
    return reasons.length > 0 ? [{ option: option.id, reasons }] : [];
  });
  state.masks[at] = kept;
  return blocks;
}

const isFixed = (status: Status | undefined): boolean => status === 'answered' || status === 'not-asked';
