import type { WayFigures } from './figures.ts';

/** A settled way: bits by position, and its figures. */
export interface Found {
  readonly masks: Int32Array;
  readonly figures: WayFigures;
}

/** At least as good in money, hours and margin. */
export const matches = (a: WayFigures, b: WayFigures): boolean =>
  a.money <= b.money && a.hours <= b.hours && a.margin >= b.margin;

/** Ways that no other found so far beats; of ways alike in all three the first stays. */
export class Frontier {
  readonly ways: Found[] = [];

  /** Whether something found is at least as good as whatever costs no less than this. */
  covers(money: number, hours: number, margin: number): boolean {
    const { ways } = this;
    for (let at = 0; at < ways.length; at += 1) {
      const { figures } = ways[at]!;
      if (figures.money <= money && figures.hours <= hours && figures.margin >= margin) {
        // What covered last tends to cover next.
        const found = ways[at]!;
        ways[at] = ways[0]!;
        ways[0] = found;
        return true;
      }
    }
    return false;
  }

  /** Takes a way in and lets go of those that it beats; false where it is beaten or matched itself. */
  add(found: Found): boolean {
    if (this.ways.some(({ figures }) => matches(figures, found.figures))) return false;
    const left = this.ways.filter(({ figures }) => !matches(found.figures, figures));
    this.ways.length = 0;
    this.ways.push(found, ...left);
    return true;
  }
}
