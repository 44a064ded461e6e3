import { CONVERSION, type SideBySide, sideBySide } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import { evaluate, type Report } from '../../calc/evaluate.ts';
import { type StopPlan, stoppingPoints } from '../../calc/working.ts';
import { alternatives } from '../../content/alternatives.ts';
import { editionByName } from '../../content/edition.ts';
import { inventedOwners } from '../../content/invented-owners.ts';
import type { NamedPath } from '../../content/reference-paths.ts';
import { decodePath } from '../../link/decode.ts';
import { encodePath } from '../../link/encode.ts';

/** An invented owner's page: the link, and what the link alone comes to at the prices of its edition. */
export interface StartingPoint {
  readonly owner: NamedPath;
  /** Of the link, without the '#'. */
  readonly fragment: string;
  readonly path: Path;
  readonly book: PriceBook;
  readonly report: Report;
}

const made = new Map<string, StartingPoint>();

/** The page of an owner, from the link that it opens. Throws on a link that does not read whole. */
export function startingPoint(owner: NamedPath): StartingPoint {
  const known = made.get(owner.id);
  if (known) return known;
  const fragment = encodePath(owner.path);
  const { path, notes } = decodePath(fragment);
  const book = editionByName(path.edition);
  if (!book || notes.length > 0) throw new Error(`the link of ${owner.id} does not read whole`);
  const point = { owner, fragment, path, book, report: evaluate(path, book) };
  made.set(owner.id, point);
  return point;
}

/** The owner of this id; throws on an author's mistake. */
export function ownerById(id: string): NamedPath {
  const found = inventedOwners.find((owner) => owner.id === id);
  if (!found) throw new Error(`no invented owner has the id ${id}`);
  return found;
}

/** Stopping points and alternatives of one page. Parts that the owner makes are no part of the link and come from the story. */
export function weighed({ owner, path, book }: StartingPoint): { side: SideBySide; stops: StopPlan[] } {
  return {
    side: sideBySide(path, book, alternatives, owner.path.families ?? []),
    stops: stoppingPoints(path, book),
  };
}

/** The alternatives looked at first, at most `most` of them. */
export const firstAlternatives = ({ order, alternatives: all }: SideBySide, most = 3) =>
  order
    .filter((id) => id !== CONVERSION)
    .slice(0, most)
    .flatMap((id) => all.find((each) => each.id === id) ?? []);
