import type { Condition } from './condition.ts';
import type { SubsystemId } from './decision.ts';

export type Effect =
  /** Either side rules the other out: whichever is answered second yields. */
  | { readonly kind: 'rulesOut'; readonly decision: string; readonly options: readonly string[] }
  | { readonly kind: 'requires'; readonly decision: string; readonly options: readonly string[] }
  | { readonly kind: 'asksNot'; readonly decisions: readonly string[] }
  | { readonly kind: 'suggests'; readonly decision: string; readonly options: readonly string[] }
  | { readonly kind: 'addsPart'; readonly part: string; readonly qty: number }
  | { readonly kind: 'removesPart'; readonly part: string; readonly qty: number }
  | { readonly kind: 'addsTask'; readonly task: string }
  | { readonly kind: 'dropsTask'; readonly tasks: readonly string[] }
  | { readonly kind: 'scalesTask'; readonly tasks: readonly string[]; readonly by: number }
  | { readonly kind: 'addsCheck'; readonly check: string }
  | { readonly kind: 'assumes'; readonly name: string; readonly value: string | number }
  /** Every task named in `of` (or every part cut on this lathe) is done before the tasks in `before` start. */
  | {
      readonly kind: 'gate';
      readonly gate: string;
      readonly of: readonly string[];
      readonly before: readonly string[];
    }
  | { readonly kind: 'orders'; readonly tasks: readonly string[] }
  | { readonly kind: 'warns'; readonly level: 'note' | 'look' | 'stop' }
  | { readonly kind: 'verdict'; readonly verdict: string };

/** A dependency of the trade, with the sentence that a person sees before choosing. */
export interface Rule {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly when: Condition;
  readonly then: readonly Effect[];
  /** One sentence, shown to people. */
  readonly say: string;
}
