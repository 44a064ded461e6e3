import { parts } from '../calc/trade.ts';

/** Words too common to tell one part from another. */
const COMMON = new Set(['and', 'for', 'the', 'with', 'set', 'kit', 'pair', 'your', 'from', 'one', 'two']);

const SUGGESTED = 3;

const plainName = (name: string): string => name.toLowerCase().normalize('NFC').replace(/\s+/g, ' ').trim();

const wordsOf = (text: string): Set<string> =>
  new Set(
    text
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .split(/[^\p{L}\p{N}]+/u)
      .map((word) => word.replace(/s$/, ''))
      .filter((word) => word.length > 2 && !COMMON.has(word)),
  );

const ids = new Set(parts.map(({ id }) => id));
const byName = new Map<string, string[]>();
for (const { id, name } of parts) byName.set(plainName(name), [...(byName.get(plainName(name)) ?? []), id]);
const words = new Map(parts.map(({ id, name }) => [id, wordsOf(name)]));

export interface Match {
  readonly part: string;
  readonly how: 'id' | 'name';
}

/** The part that a row means beyond doubt: by its id, or by its whole name where only one part bears it. */
export function matchPart(id: string, name: string, wanted: ReadonlySet<string>): Match | undefined {
  for (const said of [id.trim(), name.trim()]) if (ids.has(said)) return { part: said, how: 'id' };
  const bearers = byName.get(plainName(name)) ?? [];
  const here = bearers.filter((part) => wanted.has(part));
  const [only, ...others] = here.length > 0 ? here : bearers;
  return only !== undefined && others.length === 0 ? { part: only, how: 'name' } : undefined;
}

/** Parts of the list that share words with a row, most words first; for the owner to choose from. */
export function suggestParts(name: string, wanted: ReadonlySet<string>): string[] {
  const said = wordsOf(name);
  return [...wanted]
    .map((part) => {
      const own = words.get(part) ?? new Set<string>();
      const shared = [...own].filter((word) => said.has(word)).length;
      return { part, shared, share: shared / Math.max(1, own.size) };
    })
    .filter(({ shared }) => shared > 0)
    .toSorted((a, b) => b.shared - a.shared || b.share - a.share)
    .slice(0, SUGGESTED)
    .map(({ part }) => part);
}
