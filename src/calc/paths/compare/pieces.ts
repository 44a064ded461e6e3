import { answerMasks } from '../../choices/choose.ts';
import type { SizeClass } from '../../core/machine.ts';
import type { Answer, Path } from '../../core/path.ts';
import { decisions } from '../../guide.ts';

/**
 * Something in which two paths differ by what their owners said. Figures in SI; undefined and empty: not said.
 * chances: own chances of the risks and the flat allowance. own-prices: quotes, orders, shops and the currency.
 */
export type Piece =
  | { readonly kind: 'answer'; readonly decision: string; readonly a: Answer; readonly b: Answer }
  | {
      readonly kind: 'fact';
      readonly fact: string;
      readonly a: number | undefined;
      readonly b: number | undefined;
    }
  | { readonly kind: 'size'; readonly a: SizeClass; readonly b: SizeClass }
  | { readonly kind: 'edition'; readonly a: string; readonly b: string }
  | { readonly kind: 'drawer'; readonly onlyA: readonly string[]; readonly onlyB: readonly string[] }
  | { readonly kind: 'own-prices' }
  | { readonly kind: 'chances' };

const same = (a: unknown, b: unknown): boolean => JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));

/** The same with the keys of every record in one order: in which order things were typed decides nothing. */
function sorted(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(sorted);
  const entries = Object.entries(value).map(([key, each]) => [key, sorted(each)] as const);
  return entries.sort(([a], [b]) => (a < b ? -1 : 1));
}

function answerPieces(a: Path, b: Path): Piece[] {
  const [here, there] = [answerMasks(a.answers), answerMasks(b.answers)];
  return decisions.flatMap(({ id }, at): Piece[] =>
    here[at] === there[at]
      ? []
      : [{ kind: 'answer', decision: id, a: a.answers[id] ?? [], b: b.answers[id] ?? [] }],
  );
}

function factPieces(a: Path, b: Path): Piece[] {
  const ids = [...new Set([...Object.keys(a.facts), ...Object.keys(b.facts)])].sort();
  return ids.flatMap((id): Piece[] =>
    a.facts[id] === b.facts[id] ? [] : [{ kind: 'fact', fact: id, a: a.facts[id], b: b.facts[id] }],
  );
}

const drawerPiece = (a: Path, b: Path): Piece => ({
  kind: 'drawer',
  onlyA: a.owned.filter((id) => !b.owned.includes(id)),
  onlyB: b.owned.filter((id) => !a.owned.includes(id)),
});

const ownPrices = ({ purchases = {}, sellers = {}, currency }: Path) => [purchases, sellers, currency];
const ownChances = ({ chances = {}, allowance }: Path) => [chances, allowance];

/** Everything in which two paths differ and that can move money or hours, in the order of the guide. */
export function piecesOf(a: Path, b: Path): Piece[] {
  const drawer = drawerPiece(a, b) as Extract<Piece, { kind: 'drawer' }>;
  return [
    ...answerPieces(a, b),
    ...factPieces(a, b),
    ...(a.size === b.size ? [] : [{ kind: 'size', a: a.size, b: b.size } as const]),
    ...(drawer.onlyA.length + drawer.onlyB.length > 0 ? [drawer] : []),
    ...(same(ownPrices(a), ownPrices(b)) ? [] : [{ kind: 'own-prices' } as const]),
    ...(same(ownChances(a), ownChances(b)) ? [] : [{ kind: 'chances' } as const]),
    ...(a.edition === b.edition ? [] : [{ kind: 'edition', a: a.edition, b: b.edition } as const]),
  ];
}

/** A record with one entry as another record has it, which may be not at all. */
function withEntry<T>(to: Readonly<Record<string, T>>, key: string, from: Readonly<Record<string, T>>) {
  const { [key]: _was, ...rest } = to;
  return key in from ? { ...rest, [key]: from[key]! } : rest;
}

/** The first path with this piece as the second has it. */
export function taking(a: Path, b: Path, piece: Piece): Path {
  switch (piece.kind) {
    case 'answer':
      return { ...a, answers: withEntry(a.answers, piece.decision, b.answers) };
    case 'fact':
      return { ...a, facts: withEntry(a.facts, piece.fact, b.facts) };
    case 'size':
      return { ...a, size: b.size };
    case 'edition':
      return { ...a, edition: b.edition };
    case 'drawer':
      return { ...a, owned: b.owned };
    case 'own-prices':
      return pick(pick(pick(a, b, 'purchases'), b, 'sellers'), b, 'currency');
    case 'chances':
      return pick(pick(a, b, 'chances'), b, 'allowance');
  }
}

/** A path with one of its private pieces as another has it, which may be not at all. */
function pick(
  to: Path,
  from: Path,
  key: 'purchases' | 'sellers' | 'currency' | 'chances' | 'allowance',
): Path {
  const { [key]: _was, ...rest } = to;
  return from[key] === undefined ? rest : { ...rest, [key]: from[key] };
}
