import type { Path } from '../calc/core/path.ts';
import type { OwnCurrency, Purchase, PurchaseState, Seller } from '../calc/core/purchase.ts';
import { $path, change } from './stores.ts';

/** Everything on the buy list that only the owner knows. Each change leaves a receipt and can be taken back. */

type OwnFields = Pick<Path, 'purchases' | 'sellers' | 'currency' | 'chances' | 'allowance' | 'start'>;

/** The path with these fields set; a field that is undefined is taken out. */
function patched(path: Path, fields: { readonly [K in keyof OwnFields]?: OwnFields[K] | undefined }): Path {
  const all: Record<string, unknown> = { ...path, ...fields };
  for (const [name, value] of Object.entries(fields)) if (value === undefined) delete all[name];
  return all as unknown as Path;
}

type Entries<T> = Readonly<Record<string, T>> | undefined;

/** The entries with one set, or taken out when there is nothing to say; nothing at all when none is left. */
function withEntry<T>(entries: Entries<T>, key: string, entry: T | undefined): Entries<T> {
  const others = Object.fromEntries(Object.entries(entries ?? {}).filter(([name]) => name !== key));
  const all = entry === undefined ? others : { ...others, [key]: entry };
  return Object.keys(all).length > 0 ? (all as Record<string, T>) : undefined;
}

const said = (purchase: Purchase | undefined): string => {
  if (!purchase) return 'to buy';
  return purchase.price ? `${purchase.state}, ${purchase.price}` : purchase.state;
};

/** Writes down a quote, an order or where it stands; undefined takes everything said about the part away. */
export function setPurchase(part: string, purchase: Purchase | undefined, name: string): void {
  const path = $path.get();
  const [saidBefore, saidNow] = [said(path.purchases?.[part]), said(purchase)];
  change(patched(path, { purchases: withEntry(path.purchases, part, purchase) }), {
    name,
    saidBefore,
    saidNow,
  });
}

/** Moves a line along; an order gets the day it was made. What is needed and has no price says nothing more. */
export function setState(part: string, state: PurchaseState, name: string, day: string): void {
  const known = $path.get().purchases?.[part];
  if (state === 'need' && !known?.price && !known?.note && !known?.seller) {
    setPurchase(part, undefined, name);
    return;
  }
  const dated = state === 'ordered' ? { date: known?.state === 'ordered' ? (known.date ?? day) : day } : {};
  setPurchase(part, { ...known, state, ...dated }, name);
}

/** Terms of a shop; undefined takes them away, the lines keep the name. */
export function setSeller(name: string, seller: Seller | undefined): void {
  const path = $path.get();
  const [saidBefore, saidNow] = ['its earlier terms', seller ? 'new terms' : 'no terms'];
  change(patched(path, { sellers: withEntry(path.sellers, name, seller) }), { name, saidBefore, saidNow });
}

/** The currency that totals are shown in; undefined goes back to US dollars. */
export function setCurrency(currency: OwnCurrency | undefined): void {
  const path = $path.get();
  const [saidBefore, saidNow] = [path.currency?.code ?? 'USD', currency?.code ?? 'USD'];
  change(patched(path, { currency }), { name: 'Currency', saidBefore, saidNow });
}

/** The owner's own chance of a risk, fraction of one; undefined goes back to ours. */
export function setChance(risk: string, chance: number | undefined, name: string): void {
  const path = $path.get();
  const ours = chance === undefined ? ['your chance', 'our chance'] : ['our chance', 'your chance'];
  const [saidBefore = '', saidNow = ''] = ours;
  change(patched(path, { chances: withEntry(path.chances, risk, chance) }), { name, saidBefore, saidNow });
}

/** A flat share of the goods in place of the risks, fraction of one; undefined goes back to the risks. */
export function setAllowance(allowance: number | undefined): void {
  const path = $path.get();
  const words = (share: number | undefined) =>
    share === undefined ? 'the risks one by one' : `${Math.round(share * 100)} % flat`;
  const about = { saidBefore: words(path.allowance), saidNow: words(allowance) };
  change(patched(path, { allowance }), { name: 'Money for trouble', ...about });
}

/** The day the work starts, ISO 8601; undefined leaves it open. */
export function setStart(start: string | undefined): void {
  const path = $path.get();
  const [saidBefore, saidNow] = [path.start ?? 'open', start ?? 'open'];
  change(patched(path, { start }), { name: 'Start of the work', saidBefore, saidNow });
}

/** Writes down many prices at once, as from a file: one receipt, one undo. */
export function addPurchases(purchases: Readonly<Record<string, Purchase>>): void {
  const path = $path.get();
  const known = Object.keys(path.purchases ?? {}).length;
  const all = { ...path.purchases, ...purchases };
  const words = (n: number) => `${n} ${n === 1 ? 'line' : 'lines'} with a price`;
  const about = { saidBefore: words(known), saidNow: words(Object.keys(all).length) };
  change(patched(path, { purchases: all }), { name: 'Prices from a file', ...about });
}
