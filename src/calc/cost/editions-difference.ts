import type { Band } from '../core/band.ts';
import type { PriceBook, PriceEntry } from '../core/price-book.ts';
import { parts } from '../trade.ts';

/** A part in two editions; `before` or `after` is missing where one of them does not know it. */
export interface PartChange {
  readonly part: string;
  readonly name: string;
  readonly before?: PriceEntry;
  readonly after?: PriceEntry;
  /** What differs, of price, lead time, pack, ship class and basis. */
  readonly changed: readonly (keyof PriceEntry)[];
}

/** How one edition differs from another, as data for a page. */
export interface EditionsDifference {
  readonly from: { readonly edition: string; readonly date: string };
  readonly to: { readonly edition: string; readonly date: string };
  readonly added: readonly PartChange[];
  readonly removed: readonly PartChange[];
  readonly moved: readonly PartChange[];
  /** Parts with the same entry in both. */
  readonly same: number;
  /** Freight, tax and duty by country, and carriage by ship class, where they differ. */
  readonly landed: readonly { readonly country: string; readonly before?: Band; readonly after?: Band }[];
  readonly carriage: readonly { readonly ship: string; readonly before?: Band; readonly after?: Band }[];
  /** True where packs and spares are priced in the one and not in the other. */
  readonly packsChanged: boolean;
}

const keys = ['price', 'leadDays', 'pack', 'ship', 'basis'] as const satisfies readonly (keyof PriceEntry)[];

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

const nameOf = new Map(parts.map(({ id, name }) => [id, name]));

function changeOf(part: string, before: PriceEntry | undefined, after: PriceEntry | undefined): PartChange {
  const changed = before && after ? keys.filter((key) => !same(before[key], after[key])) : [];
  const sides = { ...(before ? { before } : {}), ...(after ? { after } : {}) };
  return { part, name: nameOf.get(part) ?? part, ...sides, changed };
}

/** Bands under the same key in two tables, where they are not the same. */
function bandsThatDiffer<K extends string>(
  key: K,
  from: Readonly<Record<string, Band>> = {},
  to: Readonly<Record<string, Band>> = {},
) {
  return [...new Set([...Object.keys(from), ...Object.keys(to)])]
    .filter((id) => !same(from[id], to[id]))
    .map((id) => {
      const sides = { ...(from[id] ? { before: from[id] } : {}), ...(to[id] ? { after: to[id] } : {}) };
      return { [key]: id, ...sides } as { readonly [P in K]: string } & {
        readonly before?: Band;
        readonly after?: Band;
      };
    });
}

/** What was added, taken out and moved between two editions, parts in the order of their names. */
export function editionsDifference(from: PriceBook, to: PriceBook): EditionsDifference {
  const ids = [...new Set([...Object.keys(from.parts), ...Object.keys(to.parts)])];
  const changes = ids
    .map((id) => changeOf(id, from.parts[id], to.parts[id]))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return {
    from: { edition: from.edition, date: from.date },
    to: { edition: to.edition, date: to.date },
    added: changes.filter(({ before }) => !before),
    removed: changes.filter(({ after }) => !after),
    moved: changes.filter(({ changed }) => changed.length > 0),
    same: changes.filter(({ before, after, changed }) => before && after && changed.length === 0).length,
    landed: bandsThatDiffer('country', from.landed, to.landed),
    carriage: bandsThatDiffer('ship', from.carriage, to.carriage),
    packsChanged: from.packs !== to.packs,
  };
}
