import { type Family, usualFamily } from '../calc/core/family.ts';
import { $path, change } from './stores.ts';

/** The parts that an owner makes again and again. Each change leaves a receipt and can be taken back. */

/** As many as fit one sheet; a file may hold more, and they are shown too. */
export const MOST_FAMILIES = 5;

interface Said {
  readonly name: string;
  readonly saidBefore: string;
  readonly saidNow: string;
}

const known = (): readonly Family[] => $path.get().families ?? [];

function put(families: readonly Family[], said: Said): void {
  const { families: _, ...others } = $path.get();
  change(families.length > 0 ? { ...others, families } : others, said);
}

/** A name that no other family has: "Parts 2". */
function freshName(): string {
  const taken = new Set(known().map(({ name }) => name));
  let number = known().length + 1;
  while (taken.has(`Parts ${number}`)) number += 1;
  return `Parts ${number}`;
}

/** Adds a family with usual figures to start from. */
export function addFamily(): void {
  const name = freshName();
  put([...known(), { name, ...usualFamily }], {
    name: 'Parts you make',
    saidBefore: 'without it',
    saidNow: `${name}, with usual figures`,
  });
}

/** Sets what was typed about the family at this place; `said` is for the receipt. */
export function setFamily(at: number, family: Family, said: Said): void {
  put(
    known().map((each, place) => (place === at ? family : each)),
    said,
  );
}

/** Takes the family at this place away. */
export function removeFamily(at: number): void {
  const name = known()[at]?.name ?? '';
  put(
    known().filter((_, place) => place !== at),
    { name: 'Parts you make', saidBefore: name, saidNow: `without ${name}` },
  );
}
