import { atom } from 'nanostores';
import type { OwnCurrency } from '../../calc/core/purchase.ts';

/** The currency that guesses are shown in: its sign, and how much of it one US dollar buys. */
export interface ShownCurrency {
  readonly sign: string;
  /** For a reader who hears it: "dollars", "EUR". */
  readonly word: string;
  readonly perDollar: number;
}

const DOLLARS: ShownCurrency = { sign: '$', word: 'dollars', perDollar: 1 };

/** Exact sums stay in the dollars they are kept in, so that their parts add up to the cent; ranges follow the owner. */
export const $shown = atom<ShownCurrency>(DOLLARS);

/** "€", "£"; the code with a space where a currency has no sign of its own. */
function signOf(code: string): string {
  const style = { style: 'currency', currency: code, currencyDisplay: 'narrowSymbol' } as const;
  const sign = new Intl.NumberFormat('en', style)
    .formatToParts(1)
    .find(({ type }) => type === 'currency')?.value;
  return sign && sign !== code && sign !== '$' ? sign : `${code} `;
}

/** Takes up the owner's currency; undefined goes back to dollars. */
export function showIn(currency: OwnCurrency | undefined): void {
  const perDollar = Number(currency?.perDollar);
  $shown.set(
    currency && perDollar > 0 ? { sign: signOf(currency.code), word: currency.code, perDollar } : DOLLARS,
  );
}

/** Dollars as an amount of the shown currency, and back again for a limit that was typed in it. */
export const toShown = (dollars: number): number => dollars * $shown.get().perDollar;
export const fromShown = (amount: number): number => amount / $shown.get().perDollar;
