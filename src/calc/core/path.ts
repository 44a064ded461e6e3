import type { SizeClass } from './machine.ts';

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
}

export const emptyPath = (edition: string): Path => ({
  edition,
  size: 'medium',
  facts: {},
  answers: {},
  owned: [],
});
