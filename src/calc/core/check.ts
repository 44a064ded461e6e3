import type { Look } from './figure.ts';
import type { Quantity } from './quantity.ts';

export type Result = 'ok' | 'look' | 'stop' | 'not-yet';

/** A comparison of what you have with what is needed. `look` when the margin is under `comfort`. */
export interface Check {
  readonly id: string;
  readonly label: string;
  readonly value: Quantity | undefined;
  readonly limit: Quantity | undefined;
  readonly sense: 'at-most' | 'at-least' | 'between';
  /** The lower limit where the value must lie between two. */
  readonly limitLow?: Quantity | undefined;
  readonly result: Result;
  /** How many times what is needed; above one is good in either sense. */
  readonly margin: number | undefined;
  /** What to do when it is not ok, or which figure is missing and how to get it. */
  readonly remedy: string;
  readonly decisions: readonly string[];
  /** It keeps people from harm: no reason makes up for it, so it cannot be accepted. */
  readonly harm?: true;
  /** Figures of the lathe still to be measured before it can be judged. */
  readonly needs?: readonly string[];
  /** When it can only be proved on the machine: the task that tests it, in words. */
  readonly testWhen?: string;
}

/** A check as the trade knows it. Undefined where it does not arise on this path. */
export type CheckRule = (look: Look) => Check | undefined;

type Draft = Omit<Check, 'result' | 'margin' | 'sense'> & { readonly comfort?: number };

/** The value must not be above the limit. */
export const atMost = (draft: Draft): Check => judge(draft, 'at-most');

/** The value must not be below the limit. */
export const atLeastLimit = (draft: Draft): Check => judge(draft, 'at-least');

/** The value must lie between the two limits. */
export function between({
  comfort = 1,
  ...draft
}: Draft & { readonly limitLow: Quantity | undefined }): Check {
  const upper = marginOf(draft.value?.value, draft.limit?.value, 'at-most');
  const lower = marginOf(draft.value?.value, draft.limitLow?.value, 'at-least');
  const margin = upper === undefined || lower === undefined ? undefined : Math.min(upper, lower);
  return { ...draft, sense: 'between', margin, result: resultOf(margin, comfort) };
}

function judge({ comfort = 1, ...draft }: Draft, sense: 'at-most' | 'at-least'): Check {
  const margin = marginOf(draft.value?.value, draft.limit?.value, sense);
  return { ...draft, sense, margin, result: resultOf(margin, comfort) };
}

function marginOf(
  value: number | undefined,
  limit: number | undefined,
  sense: 'at-most' | 'at-least',
): number | undefined {
  if (value === undefined || limit === undefined) return undefined;
  const [above, under] = sense === 'at-most' ? [limit, value] : [value, limit];
  const times = above / under;
  return Number.isFinite(times) ? times : Number.MAX_VALUE;
}

function resultOf(margin: number | undefined, comfort: number): Result {
  if (margin === undefined) return 'not-yet';
  if (margin < 1) return 'stop';
  return margin < comfort ? 'look' : 'ok';
}
