import type { Condition } from './condition.ts';
import type { SubsystemId } from './decision.ts';
import type { Machine } from './machine.ts';

/** How many, fixed or from the machine's figures (metres for cable, pieces otherwise). */
export type Qty = number | ((machine: Machine) => number);

/** One reason for buying a part. */
export interface Need {
  readonly when: Condition;
  readonly qty: Qty;
  /** Why the line is there, in the owner's words: "one for each belt drive". */
  readonly why: string;
}

/**
 * Something to buy. It stands once in the bill however many reasons there are:
 * 'most' takes the largest of the quantities asked for, 'sum' adds them.
 */
export interface Part {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly name: string;
  /** What it is, what to look for, one or two sentences. */
  readonly note: string;
  readonly unit: 'each' | 'set' | 'pair' | 'lot' | 'kit' | 'metre' | 'job';
  readonly combine: 'most' | 'sum';
  /** Dearer on a larger lathe, cheaper on a small one. */
  readonly scaled?: boolean;
  /** A credit: taken off the total instead of added. */
  readonly credit?: boolean;
  /** Paid again every year; never in the once-only total. */
  readonly yearly?: boolean;
  /** Counts only as a shop tool: left out of what people quote as "the parts". */
  readonly shopTool?: boolean;
  /** What to keep as a spare and why. */
  readonly spares?: string;
  /** What to measure when it arrives. */
  readonly inspect?: string;
  readonly needs: readonly Need[];
}

/** Parts and the tasks that cannot be done without them; tasks that are not in a plan do not count. */
export interface NeededBy {
  readonly parts: readonly string[];
  readonly tasks: readonly string[];
}
