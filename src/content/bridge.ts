import bridges from './bridge.json' with { type: 'json' };

/** How the middle of a reference path's total moved, step by step; dollars. `npm run bridge` works it out. */
export interface Bridge {
  readonly path: string;
  /** What the sums gave before any correction, as they were printed. */
  readonly printed: number;
  /** P50 after each step; every step holds those before it. */
  readonly steps: {
    readonly asTheyStood: number;
    readonly landed: number;
    readonly risks: number;
    readonly prices: number;
    readonly parts: number;
  };
  /** Parts added, dropped or counted otherwise, by what they move the sum of likely prices. */
  readonly largest: readonly { readonly name: string; readonly likely: number }[];
}

export const correctionBridges: readonly Bridge[] = bridges;
