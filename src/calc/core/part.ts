import type { Condition } from './condition.ts';
import type { SubsystemId } from './decision.ts';
import type { Machine } from './machine.ts';
import type { StageId } from './task.ts';

/**
 * How many, fixed, from the machine's figures (metres for cable, pieces otherwise), or as many as a figure of the design
 * says, rounded up.
 */
export type Qty = number | ((machine: Machine) => number) | { readonly figure: string };

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
  /** Units bought on top of the need and kept as spares, each with its reason; they add up. */
  readonly keep?: readonly Need[];
  /** Stage that needs it first, where that is not the usual one of its room. */
  readonly stage?: StageId;
  /** What to order in words, from the figures of the design (SI; NaN where one does not arise). */
  readonly size?: (figure: (id: string) => number) => string | undefined;
  /** What to measure when it arrives. */
  readonly inspect?: string;
  readonly needs: readonly Need[];
}
