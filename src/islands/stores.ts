import type { SizeClass } from '../calc/core/machine.ts';
import type { Answer, Path } from '../calc/core/path.ts';
import { factById, sizeNames } from '../calc/facts.ts';
import { decisionById } from '../calc/guide.ts';
import { $path, $receipts } from './figures.ts';
import { keep } from './keeping.ts';
import { dismiss } from './notes.ts';
import { takingOffered } from './offered.ts';
import { type Receipt, sayAnswer } from './receipts.ts';

export { $fault, $path, $receipts, $report } from './figures.ts';
export { dismissElsewhere, openKept, openNew, start, startNew, takeOtherTab } from './opening.ts';
export { $open } from './shelf/open-path.ts';

/** What the owner does to the path in hand. Every change is kept at once. */

/** Keeps the open path on the shelf as it stands, as one that came with a link. */
export const keepNow = (): void => keep($path.get());

/** Takes what the link carries of ticks, hours and prices in place of those kept here. */
export function takeOffered(): void {
  dismiss('own-offered');
  const said = { saidBefore: 'those kept here', saidNow: 'those of the link' };
  change(takingOffered($path.get()), { name: 'Ticks, hours and prices', ...said });
}

/** Answers a question: option ids, none for "not sure yet", undefined to take the answer away. */
export function answer(id: string, options: Answer | undefined): void {
  const decision = decisionById(id);
  if (!decision) throw new Error(`no decision has the id ${id}`);
  const path = $path.get();
  const { [id]: old, ...others } = path.answers;
  const answers = options === undefined ? others : { ...others, [id]: options };
  const said = { saidBefore: sayAnswer(decision, old), saidNow: sayAnswer(decision, options) };
  change({ ...path, answers }, { decision: id, name: decision.name, ...said });
}

/** Sets a figure of the lathe in SI units; undefined goes back to the typical one. `said` is what was typed. */
export function setFact(id: string, value: number | undefined, said = ''): void {
  const path = $path.get();
  if (path.facts[id] === value) return;
  const { [id]: old, ...others } = path.facts;
  const facts = value === undefined ? others : { ...others, [id]: value };
  const fact = factById(id);
  const ours = fact?.typical ? 'our typical figure' : 'our own figure';
  const saidBefore = old === undefined ? ours : 'your earlier figure';
  const saidNow = value === undefined ? ours : said;
  change({ ...path, facts }, { name: fact?.name ?? id, saidBefore, saidNow });
}

/** Chooses the size of lathe that typical figures come from. */
export function setSize(size: SizeClass): void {
  const path = $path.get();
  if (path.size === size) return;
  const said = { saidBefore: sizeNames[path.size], saidNow: sizeNames[size] };
  change({ ...path, size }, { name: 'Size of lathe', ...said });
}

/** Takes the prices of another edition; the receipt says what they move. */
export function setEdition(edition: string): void {
  const path = $path.get();
  change(
    { ...path, edition },
    { name: 'Prices', saidBefore: `edition ${path.edition}`, saidNow: `edition ${edition}` },
  );
}

/** Says whether a part is already in the drawer. */
export function setOwned(part: string, owned: boolean, name = part): void {
  const path = $path.get();
  const others = path.owned.filter((id) => id !== part);
  const said = owned ? ['to buy', 'in the drawer'] : ['in the drawer', 'to buy'];
  const [saidBefore = '', saidNow = ''] = said;
  change({ ...path, owned: owned ? [...others, part] : others }, { name, saidBefore, saidNow });
}

/** Takes back the newest change. */
export function undo(): void {
  const [newest, ...older] = $receipts.get();
  if (!newest) return;
  $receipts.set(older);
  keep(newest.pathBefore);
}

/** A change that the owner sees where it was made, such as a tick: kept, but without a receipt. */
export function changeQuietly(path: Path): void {
  keep(path);
}

/** A change by the owner: it leaves a receipt and can be taken back. */
export function change(
  pathNow: Path,
  about: Pick<Receipt, 'decision' | 'name' | 'saidBefore' | 'saidNow'>,
): void {
  const receipts = $receipts.get();
  const number = (receipts[0]?.number ?? 0) + 1;
  $receipts.set([{ number, ...about, pathBefore: $path.get(), pathNow }, ...receipts]);
  keep(pathNow);
}
