import { atom } from 'nanostores';
import type { SizeClass } from '../calc/core/machine.ts';
import type { Answer, Path } from '../calc/core/path.ts';
import type { Report } from '../calc/evaluate.ts';
import { factById, sizeNames } from '../calc/facts.ts';
import { decisionById } from '../calc/guide.ts';
import { decodePath } from '../link/decode.ts';
import { encodePath } from '../link/encode.ts';
import { fragmentAfterStep, openingFragment, writeFragment } from './address.ts';
import { onOtherTab, recall, remember } from './memory.ts';
import { loadPreferences } from './preferences.ts';
import { movedBetween, type Receipt, sayAnswer } from './receipts.ts';

/** Something the owner should know about how these answers got here. */
export interface Note {
  readonly kind: string;
  readonly say: string;
}

/** The owner's lathe and answers: what the address bar says. */
export const $path = atom<Path>(decodePath('').path);
/** Everything worked out from the path; undefined until the first figures are there. */
export const $report = atom<Report | undefined>(undefined);
/** What could not be read from a link, and what this device does or refuses to remember. */
export const $notes = atom<readonly Note[]>([]);
/** What each change moved, newest first. */
export const $receipts = atom<readonly Receipt[]>([]);
/** A mistake of ours met while working out the figures; the screens show it in their boundary. */
export const $fault = atom<unknown>(undefined);

const REMEMBERED = 'path';
let started = false;

/** Takes up the path from the address, or from this device, and follows the history. Every island may call it; once is enough. */
export function start(): void {
  if (started) return;
  started = true;
  loadPreferences();
  openPath(openingFragment(), recall(REMEMBERED));
  window.addEventListener('popstate', () => {
    const fragment = fragmentAfterStep();
    if (fragment === undefined) writeFragment(encodePath($path.get()));
    else openPath(fragment);
  });
  onOtherTab(REMEMBERED, (fragment) => {
    if (fragment !== encodePath($path.get())) addNote(OTHER_TAB);
  });
}

const OTHER_TAB: Note = {
  kind: 'other-tab',
  say: 'Another tab has changed your answers. This tab keeps its own; whichever you change last is what this device remembers.',
};
const REFUSED: Note = {
  kind: 'storage',
  say: 'This browser keeps nothing for this page. The link in the address bar holds every answer: save it as a bookmark.',
};
const TAKEN_UP: Note = {
  kind: 'remembered',
  say: 'These are the answers that you gave last time on this device.',
};

function openPath(fragment: string, remembered?: string): void {
  const takenUp =
    fragment === '' && remembered !== undefined && remembered !== encodePath(decodePath('').path);
  const { path, notes } = decodePath(takenUp ? remembered : fragment);
  $receipts.set([]);
  $notes.set(takenUp ? [TAKEN_UP, ...notes] : notes);
  $path.set(path);
  if (takenUp) writeFragment(encodePath(path));
  workOut();
}

/** Starts again with no answers. What was there can be had back with Undo. */
export function startAfresh(): void {
  dismiss('remembered');
  change(decodePath('').path, { name: 'All answers', saidBefore: 'as they were', saidNow: 'taken away' });
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
  const ours = fact?.group === 'own' ? 'our own figure' : 'our typical figure';
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
  write(newest.pathBefore);
}

/** Takes a notice off the screen. */
export function dismiss(kind: string): void {
  $notes.set($notes.get().filter((note) => note.kind !== kind));
}

function change(pathNow: Path, about: Pick<Receipt, 'decision' | 'name' | 'saidBefore' | 'saidNow'>): void {
  const receipts = $receipts.get();
  const number = (receipts[0]?.number ?? 0) + 1;
  $receipts.set([{ number, ...about, pathBefore: $path.get(), pathNow }, ...receipts]);
  write(pathNow);
}

function write(path: Path): void {
  const fragment = encodePath(path);
  $path.set(path);
  writeFragment(fragment);
  if (!remember(REMEMBERED, fragment)) addNote(REFUSED);
  workOut();
}

function addNote(note: Note): void {
  dismiss(note.kind);
  $notes.set([...$notes.get(), note]);
}

let waiting = false;

/** Works the figures out when the page has nothing better to do; changes made meanwhile are taken along. */
function workOut(): void {
  if (waiting) return;
  waiting = true;
  const whenIdle = window.requestIdleCallback ?? ((run: () => void) => window.setTimeout(run, 30));
  whenIdle(
    async () => {
      try {
        const { reportOf } = await import('./compute.ts');
        waiting = false;
        settle(reportOf);
        $fault.set(undefined);
      } catch (fault) {
        waiting = false;
        $fault.set(fault);
      }
    },
    { timeout: 300 },
  );
}

/**
 * Each change gets its own figures, also when several came before the figures were ready. A change whose figures failed
 * says so and does not stand in the way of the next one.
 */
function settle(reportOf: (path: Path) => Report): void {
  const path = $path.get();
  let report = $report.get();
  const settled = $receipts
    .get()
    .toReversed()
    .map((receipt): Receipt => {
      if (receipt.moved || receipt.lost) return receipt;
      try {
        const before = report?.path === receipt.pathBefore ? report : reportOf(receipt.pathBefore);
        report = reportOf(receipt.pathNow);
        return { ...receipt, moved: movedBetween(before, report, receipt.decision) };
      } catch {
        return { ...receipt, lost: true };
      }
    });
  $receipts.set(settled.toReversed());
  $report.set(report?.path === path ? report : reportOf(path));
}
