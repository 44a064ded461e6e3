import type { Band } from './core/band.ts';
import type { SubsystemId } from './core/decision.ts';
import type { PurchaseState } from './core/purchase.ts';
import type { StageId } from './core/task.ts';

/** What the owner typed for a line, priced in dollars. Carriage, tax and duty stand with the seller, not here. */
export interface PricedPurchase {
  readonly state: PurchaseState;
  /** Units of the list quoted or bought. */
  readonly qty: number;
  /** Units still to be bought beside them, spares among them. */
  readonly stillNeeded: number;
  /** Dollars for `qty`, decimal text to the cent, rounded once; missing where the price cannot be used. */
  readonly goods?: string;
  /** Dollars for one unit of the list, decimal text to at most four places. */
  readonly each?: string;
  /** As typed: "12.50 EUR a pack". Empty where no price was typed. */
  readonly asTyped: string;
  /** The price of one unit lies outside our band: ask whether unit or pack was meant. The price counts all the same. */
  readonly outsideBand?: 'below' | 'above';
  /** Why a typed price does not count: no price, not a number, or a currency without a rate. Our band stands in. */
  readonly asks?: 'price' | 'number' | 'currency';
  /** Name of the seller as the owner gave it. */
  readonly seller?: string;
  readonly date?: string;
  readonly note?: string;
}

/** When to order, in days from the start of the work; below zero: before it. With a start day in the path, dates too. */
export interface OrderBy {
  /** First day of the stage that needs it, at the plan's hours a week. */
  readonly neededAt: number;
  /** Needed at, less the likely and less the slow lead time. */
  readonly likely: number;
  readonly slow: number;
  /** ISO 8601 days of the same three. */
  readonly dates?: { readonly neededAt: string; readonly likely: string; readonly slow: string };
}

export interface BillLine {
  readonly part: string;
  readonly subsystem: SubsystemId;
  readonly name: string;
  readonly note: string;
  readonly unit: string;
  readonly qty: number;
  /** Dollars for one unit and for the line, before freight, tax and duty. Zero for what is owned. */
  readonly each: Band;
  readonly line: Band;
  readonly owned: boolean;
  readonly credit: boolean;
  readonly yearly: boolean;
  readonly shopTool: boolean;
  readonly reasons: readonly string[];
  readonly leadDays: Band;
  readonly ship: string;
  readonly spares?: string;
  readonly inspect?: string;
  /** "have": in the drawer. "returned": sent back, so needed again. */
  readonly state: 'have' | PurchaseState;
  /** Units on top of the need that are kept as spares, each reason once. */
  readonly keep: { readonly count: number; readonly why: readonly string[] };
  /** Need and spares. */
  readonly toHave: number;
  /** Units in a pack, whole packs still to be bought, and what is left over of all that is bought. */
  readonly pack: number;
  readonly packs: number;
  readonly leftOver: number;
  /** Cut or order size from the design: "order 12 × 4, 480 mm long". */
  readonly size?: string;
  /** Stage that needs it first. */
  readonly stage: StageId;
  readonly orderBy: OrderBy;
  readonly purchase?: PricedPurchase;
}
