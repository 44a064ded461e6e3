import type { PurchaseState } from '../../calc/core/purchase.ts';

/** The way of a line from need to shelf, in order. What went back starts again. */
export const track = [
  'need',
  'quoted',
  'ordered',
  'arrived',
  'checked',
] as const satisfies readonly PurchaseState[];

export type Step = (typeof track)[number];

/** A line in hand by the owner's own word, or where its purchase stands. */
export type LineState = 'have' | PurchaseState;

interface Action {
  readonly to: PurchaseState;
  readonly say: string;
}

/** What an owner does next with a line in this state; "add a quote" opens the form instead of stepping on. */
export const nextActions: Readonly<Record<PurchaseState, readonly Action[]>> = {
  need: [],
  quoted: [{ to: 'ordered', say: 'Ordered' }],
  ordered: [{ to: 'arrived', say: 'Arrived' }],
  arrived: [
    { to: 'checked', say: 'Checked' },
    { to: 'returned', say: 'Send back' },
  ],
  checked: [],
  returned: [],
};

/** Where the marker stands on the track; what went back is needed again. */
export const stepOf = (state: PurchaseState): number => (state === 'returned' ? 0 : track.indexOf(state));

/** Lines that need no more buying: owned, or come and found right. */
export const isInHand = (state: LineState): boolean =>
  state === 'have' || state === 'arrived' || state === 'checked';
