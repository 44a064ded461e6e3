import { atom } from 'nanostores';
import type { SizeClass } from '../calc/core/machine.ts';
import type { Answer, Path } from '../calc/core/path.ts';
import type { Progress } from '../calc/core/progress.ts';
import type { Report } from '../calc/evaluate.ts';
import { factById, sizeNames } from '../calc/facts.ts';
import { decisionById } from '../calc/guide.ts';
import type { Own } from '../export/own.ts';
import { decodePath } from '../link/decode.ts';
import { encodePath } from '../link/encode.ts';
import { fragmentAfterStep, openingFragment, writeFragment } from './address.ts';
import { $own, openOwn, replaceAll } from './kept-lines.ts';
import { onOtherTab, recall, remember } from './memory.ts';
import {
  $notes,
  addNote,
  dismiss,
  NOT_KEPT,
  OTHER_TAB,
  OWN_COUNTED,
  REFUSED,
  TAKEN_UP,
  TICKS_OFFERED,
} from './notes.ts';
import { ownOf, sameOwn, withOwn } from './own-part.ts';
import { loadPreferences } from './preferences.ts';
import { type Receipt, sayAnswer } from './receipts.ts';
import { settled } from './settled.ts';
import { showIn } from './shared/currency.ts';

/** The owner's lathe and answers: what the address bar says. */
export const $path = atom<Path>(decodePath('').path);
/** Everything worked out from the path; undefined until the first figures are there. */
export const $report = atom<Report | undefined>(undefined);
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
  $own.listen(takeUpOwn);
  ready = openOwn();
  window.addEventListener('popstate', () => {
    const fragment = fragmentAfterStep();
    if (fragment === undefined) writeFragment(encodePath($path.get()));
    else openPath(fragment);
  });
  onOtherTab(REMEMBERED, (fragment) => {
    if (fragment !== encodePath($path.get())) addNote(OTHER_TAB);
  });
}

/** Quotes and orders kept on this device belong to the owner's own path; a link from elsewhere says that they are counted. */
let isElsewhere = false;
let leftOut = false;

function takeUpOwn(own: Own): void {
  const path = $path.get();
  if (leftOut || sameOwn(own, ownOf(path))) return;
  if (isElsewhere && own.purchases) addNote(OWN_COUNTED);
  place(withOffered(withOwn(path, own)));
}

/** Ticks, readings and hours that came in the link. */
let offered: Progress | undefined;

/** They are shown where this device has none of its own; else the owner is asked. */
function withOffered(path: Path): Path {
  if (!offered) return path;
  if (!path.progress) return { ...path, progress: offered };
  if (!sameOwn({ progress: offered }, { progress: path.progress })) addNote(TICKS_OFFERED);
  return path;
}

/** Takes the ticks, readings and hours of the link in place of those kept here. */
export function takeOffered(): void {
  dismiss('ticks-offered');
  if (offered) changeQuietly({ ...$path.get(), progress: offered });
}

/** Shows a path from elsewhere without the quotes and orders kept here; they stay kept. */
export function leaveOwnOut(): void {
  leftOut = true;
  dismiss('own-counted');
  place(withOwn($path.get(), {}));
}

/** Puts a path on the screen that is not a change by the owner. */
function place(path: Path): void {
  showIn(path.currency);
  $path.set(path);
  workOut();
}

function openPath(fragment: string, remembered?: string): void {
  const takenUp =
    fragment === '' && remembered !== undefined && remembered !== encodePath(decodePath('').path);
  const { path: read, notes } = decodePath(takenUp ? remembered : fragment);
  offered = read.progress;
  const path = withOffered(withOwn(read, leftOut ? {} : $own.get()));
  isElsewhere = fragment !== '' && remembered !== undefined && remembered !== encodePath(read);
  $receipts.set([]);
  $notes.set(takenUp ? [TAKEN_UP, ...notes] : notes);
  place(path);
  if (takenUp) writeFragment(encodePath(path));
}

/** Starts again with no answers. What was there can be had back with Undo. */
export function startAfresh(): void {
  dismiss('remembered');
  change(withOwn(decodePath('').path, ownOf($path.get())), {
    name: 'All answers',
    saidBefore: 'as they were',
    saidNow: 'taken away',
  });
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
  write(newest.pathBefore);
}

/** A change that the owner sees where it was made, such as a tick: kept, but without a receipt. */
export function changeQuietly(path: Path): void {
  write(path);
}

/** A change by the owner: it leaves a receipt and can be taken back. */
export function change(
  pathNow: Path,
  about: Pick<Receipt, 'decision' | 'name' | 'saidBefore' | 'saidNow'>,
): void {
  const receipts = $receipts.get();
  const number = (receipts[0]?.number ?? 0) + 1;
  $receipts.set([{ number, ...about, pathBefore: $path.get(), pathNow }, ...receipts]);
  write(pathNow);
}

function write(path: Path): void {
  const fragment = encodePath(path);
  place(path);
  writeFragment(fragment);
  if (!remember(REMEMBERED, fragment)) addNote(REFUSED);
  keepOwn(ownOf(path));
}

/** Keeps what only the owner knows; where that was left out nothing may take its place, which is said. */
function keepOwn(own: Own): void {
  if (!leftOut && !sameOwn($own.get(), own)) replaceAll(own);
  if (leftOut && !sameOwn(own, {})) addNote(NOT_KEPT);
}

let waiting = false;
/** The first figures wait for what is kept on this device, so that nothing typed can come before it. */
let ready: Promise<void> = Promise.resolve();

/** Works the figures out when the page has nothing better to do; changes made meanwhile are taken along. */
function workOut(): void {
  if (waiting) return;
  waiting = true;
  const whenIdle = window.requestIdleCallback ?? ((run: () => void) => window.setTimeout(run, 30));
  whenIdle(
    async () => {
      try {
        const [{ reportOf }] = await Promise.all([import('./compute.ts'), ready]);
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

function settle(reportOf: (path: Path) => Report): void {
  const { receipts, report } = settled($receipts.get(), $path.get(), $report.get(), reportOf);
  $receipts.set(receipts);
  $report.set(report);
}
