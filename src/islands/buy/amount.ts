import { readAmount } from '../../export/read-amount.ts';

/** What an amount field holds: nothing, an amount as plain decimal text, or words that say what is wrong. */
export type Amount =
  | { readonly kind: 'empty' }
  | { readonly kind: 'amount'; readonly text: string; readonly currency?: string }
  | { readonly kind: 'unreadable'; readonly say: string };

const HELP: readonly (readonly [about: string, say: string])[] = [
  ['two ways', 'Type it without marks between thousands, such as 1234 or 1.50.'],
  ['below zero', 'What comes back is marked “send back”.'],
];

/** Reads an amount of money at or above zero as owners type it: "52", "$ 52", "1,234.50", "1.234,50", "12.99 EUR". */
export function parseAmount(typed: string): Amount {
  if (typed.trim() === '') return { kind: 'empty' };
  const { amount, currency, fault } = readAmount(typed, undefined);
  if (amount !== undefined) return { kind: 'amount', text: amount, ...(currency ? { currency } : {}) };
  const help = HELP.find(([about]) => fault?.includes(about))?.[1] ?? 'Type figures, such as 52 or 1,234.50.';
  return { kind: 'unreadable', say: `${fault ?? 'This cannot be read'}. ${help}` };
}
