import type { Family } from './family.ts';
import type { SizeClass } from './machine.ts';
import type { Progress } from './progress.ts';
import type { OwnCurrency, Purchase, Seller } from './purchase.ts';

/** An answer: option ids; one, or several where several may be ticked; empty for "not sure yet". */
export type Answer = readonly string[];

/** A lathe with a set of answers: everything an owner has said, and nothing else. */
export interface Path {
  /** Price edition the figures come from. */
  readonly edition: string;
  readonly size: SizeClass;
  /** Measured figures in SI units, only those the owner typed. */
  readonly facts: Readonly<Record<string, number>>;
  readonly answers: Readonly<Record<string, Answer>>;
  /** Parts already in the drawer. */
  readonly owned: readonly string[];
  /** Quotes and orders by part id. Private: kept on the device and in files, in a link only on request. */
  readonly purchases?: Readonly<Record<string, Purchase>>;
  readonly sellers?: Readonly<Record<string, Seller>>;
  readonly currency?: OwnCurrency;
  /** The owner's own chance of a risk, fraction of one, by risk id. */
  readonly chances?: Readonly<Record<string, number>>;
  /** What has been done, measured and spent so far. Private, like the purchases. */
  readonly progress?: Progress;
  /** A flat share of the goods set aside for trouble, fraction of one, in place of the risks; never both. */
  readonly allowance?: number;
  /** What is made on the lathe again and again; for the question whether it is worth it. */
  readonly families?: readonly Family[];
  /** Day the work starts, ISO 8601: order-by days then become dates. Private, like the purchases. */
  readonly start?: string;
}

export const emptyPath = (edition: string): Path => ({
  edition,
  size: 'medium',
  facts: {},
  answers: {},
  owned: [],
});
