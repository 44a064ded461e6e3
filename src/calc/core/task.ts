import type { Band } from './band.ts';
import type { Condition } from './condition.ts';
import type { SubsystemId } from './decision.ts';

export type StageId =
  | 'decide'
  | 'design-and-order'
  | 'make-first'
  | 'bench-electrics'
  | 'carriage-stage'
  | 'cross-stage'
  | 'spindle-stage'
  | 'machine-wiring'
  | 'commission'
  | 'prove';

/** usable: works by hand. cutting: this task makes parts on the lathe itself. out: cannot be used until the next stopping point. */
export type LatheState = 'usable' | 'cutting' | 'out';

/** More work on a task under a condition; hours as a band of its own. */
export interface ExtraWork {
  /** Permanent, unique over all tasks; names a column of the builds. */
  readonly id: string;
  readonly when: Condition;
  readonly hours: Band;
  readonly why: string;
}

/** The same work done faster or slower under a condition. */
export interface Scaling {
  readonly when: Condition;
  readonly by: number;
  readonly why: string;
}

export interface Task {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly stage: StageId;
  /** What to do, as an instruction: "Bore the pulleys to their shafts". */
  readonly name: string;
  readonly hours: Band;
  /** In the plan when this holds. Leave out for every path. */
  readonly when?: Condition;
  /** Task ids; those that are not in the plan are stepped over to their own prerequisites. */
  readonly after: readonly string[];
  /** Prerequisites that hold only on some paths: an only lathe, a job done in stages. */
  readonly afterWhen?: readonly { readonly when: Condition; readonly after: readonly string[] }[];
  readonly tools: string;
  readonly lathe: LatheState;
  readonly undo: 'can-be-undone' | 'partly' | 'cannot-be-undone';
  /** Test and acceptance: what must be true, with figures. */
  readonly test: string;
  /** Work on what carries mains: local codes and licensed electricians come first, and the plan stops to say so. */
  readonly mains?: true;
  /** Said beside the task where somebody could be hurt. */
  readonly safety?: string;
  readonly extra?: readonly ExtraWork[];
  readonly scale?: readonly Scaling[];
  /** Long explanation of why this order, where it is not plain. */
  readonly note?: string;
}
