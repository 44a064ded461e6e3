import { expect } from 'vitest';

/** A hand-worked figure is carried to three or four digits on the way: within one part in a hundred unless said otherwise. */
export function near(ours: number, byHand: number, share = 0.01): void {
  expect(Math.abs(ours / byHand - 1), `${ours} against ${byHand} by hand`).toBeLessThanOrEqual(share);
}
