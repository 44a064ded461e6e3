import { decisionPosition, type State } from '../../choices/state.ts';
import type { Look } from '../../core/figure.ts';
import { designOf } from '../../design.ts';

/** It cannot be told before this question (position) is settled. */
export class Waits {
  readonly on: number;
  constructor(on: number) {
    this.on = on;
  }
}

/** Which questions may change, and which of them are settled. */
export interface Settling {
  readonly state: State;
  readonly variableAt: Int32Array;
  /** By variable: 1 once it is settled. */
  readonly settled: Uint8Array;
}

interface Branch<T> {
  at: number;
  readonly next: Map<number, Branch<T>>;
  value?: T;
  done: boolean;
}

const branch = <T>(): Branch<T> => ({ at: -1, next: new Map(), done: false });

/**
 * Something worked out from the design, remembered by the answers it looked at: what looks at three questions is worked
 * out once for each way of answering those three, whatever the others say. Answers `Waits` while it needs a question
 * that is not settled yet.
 */
export function remembered<T>(settling: Settling, compute: (look: Look) => T): () => T | Waits {
  const root = branch<T>();
  const { state, variableAt, settled } = settling;
  return () => {
    let here = root;
    while (!here.done && here.at !== -1) {
      if (settled[variableAt[here.at]!] === 0) return new Waits(here.at);
      const mask = state.masks[here.at]!;
      let next = here.next.get(mask);
      if (!next) {
        next = branch<T>();
        here.next.set(mask, next);
      }
      here = next;
    }
    return here.done ? here.value! : workOut(settling, root, compute);
  };
}

/** Works it out and plants what was read on the way. */
function workOut<T>(settling: Settling, root: Branch<T>, compute: (look: Look) => T): T | Waits {
  const { state, variableAt, settled } = settling;
  let here = root;
  const read = new Set<number>();
  const look = designOf(state, (decision) => {
    const at = decisionPosition(decision);
    const variable = variableAt[at]!;
    if (variable === -1 || read.has(at)) return;
    here.at = at;
    if (settled[variable] === 0) throw new Waits(at);
    read.add(at);
    const mask = state.masks[at]!;
    const next = here.next.get(mask) ?? branch<T>();
    here.next.set(mask, next);
    here = next;
  });
  try {
    // Worked out first: reading moves `here` on.
    const value = compute(look);
    here.value = value;
    here.done = true;
    return value;
  } catch (thrown) {
    if (thrown instanceof Waits) return thrown;
    throw thrown;
  }
}
