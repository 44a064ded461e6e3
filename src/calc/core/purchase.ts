/** How far a line of the buy list has come. "have" is not among them: what is owned stands in the path's own list. */
export const purchaseStates = ['need', 'quoted', 'ordered', 'arrived', 'checked', 'returned'] as const;

export type PurchaseState = (typeof purchaseStates)[number];

/** States in which the money is spent: the sum is exact and has no spread. */
export const spentStates: readonly PurchaseState[] = ['ordered', 'arrived', 'checked'];

/** What the owner knows of one line of the buy list. Amounts are decimal text as typed, so that no cent is lost. */
export interface Purchase {
  readonly state: PurchaseState;
  /** Shop price, of one unit unless `per` says otherwise: "12.50". */
  readonly price?: string;
  /** What the price buys: one unit of the list, one pack, or everything that `qty` says. */
  readonly per?: 'unit' | 'pack' | 'line';
  /** Currency the price was typed in, ISO 4217; missing means US dollars. */
  readonly currency?: string;
  /** Units quoted or bought; missing means as many as the plan asks for. */
  readonly qty?: number;
  /** Day of the quote or the order, ISO 8601. */
  readonly date?: string;
  /** Key into the path's sellers. */
  readonly seller?: string;
  readonly note?: string;
}

/** One shop: what it asks for carriage, and which tax and duty come on top. Its key is the name the owner gave it. */
export interface Seller {
  /** Carriage of one order, decimal text in `currency`; missing means our range by the heaviest thing in it. */
  readonly freight?: string;
  /** Goods, before tax, from which carriage costs nothing. */
  readonly freeFrom?: string;
  /** Currency of `freight` and `freeFrom`, ISO 4217; missing means US dollars. */
  readonly currency?: string;
  /** Ships from another country: duty and import tax are due at the door. */
  readonly abroad?: boolean;
  /** Share of goods and carriage taken as duty, fraction of one; only from abroad. */
  readonly dutyRate?: number;
  /** The tax counts carriage too; import tax always does. */
  readonly carriageTaxed?: boolean;
  /** Its prices already hold the tax. */
  readonly taxIncluded?: boolean;
}

/** A currency of the owner's own: ISO 4217 code, and how much of it one US dollar buys, decimal text. */
export interface OwnCurrency {
  readonly code: string;
  readonly perDollar: string;
}
