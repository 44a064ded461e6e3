import type { Band } from './band.ts';
import type { Condition } from './condition.ts';
import type { SubsystemId } from './decision.ts';
import type { StageId } from './task.ts';

/** Makes a chance larger or smaller. */
export interface Lever {
  readonly when: Condition;
  readonly by: number;
  readonly why: string;
}

/** Something that may go wrong, with money and hours if it does. */
export interface Risk {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly name: string;
  readonly cause: string;
  readonly effect: string;
  readonly sign: string;
  readonly prevent: string;
  /** Chance that it happens at all on this path, fractions of one, judgement. */
  readonly chance: Band;
  /** Dollars and hours if it happens. */
  readonly money: Band;
  readonly hours: Band;
  /** Troubles of one kind tend to come together: they share a factor in the builds. */
  readonly kind: 'mechanics' | 'electrics' | 'other';
  /** Where it strikes; hours in a stage that leaves the lathe unusable lengthen the time out of use. */
  readonly stage: StageId;
  /** Only where its cause exists. */
  readonly when: Condition;
  readonly levers: readonly Lever[];
  /** Parts of which a spare on the list takes the place of the money: it is paid for already, only the hours remain. */
  readonly spares?: readonly string[];
  /** Somebody could be hurt: shown apart, never weighed only in money. */
  readonly injury?: boolean;
  /** A choice rather than a cost (regret, creep, a stall), or counted elsewhere: shown, never summed. */
  readonly countedIn?: 'nowhere' | 'landed-rate' | 'tasks';
}
