import { firstOf } from '../link/pairs.ts';
import { recall, remember } from './memory.ts';
import { isDrawnLate } from './shared/places.ts';

/**
 * The address bar holds the path. Entries of the history that this tab wrote carry the name of their line of work, which
 * is the id that the path has on the shelf or will have there. Going back to such an entry keeps later answers, while a
 * link typed or pasted in between is taken as it stands.
 */
interface Mark {
  readonly line: string;
  readonly fragment: string;
  /** Lines that went on into this one, when its path became a path of its own. */
  readonly earlier: readonly string[];
}

/** What an address stands for: a line of work where this tab wrote it, and a fragment. */
export interface Arrival {
  readonly line?: string | undefined;
  readonly fragment: string;
}

const SESSION = 'line';
let mark: Mark = { line: '', fragment: '', earlier: [] };

/** What stands behind the path in the address: the other columns of a comparison, each with its ';' in front. */
let tail = '';

const fragmentNow = (): string => firstOf(window.location.hash);

/** Puts something behind the path from now on, and into the present entry of the history. */
export function setTail(text: string): void {
  if (tail === text) return;
  tail = text;
  writeFragment(mark.fragment);
}

/** An anchor inside the page, and no path. */
const isAnchor = (fragment: string): boolean =>
  fragment !== '' && (document.getElementById(fragment) !== null || isDrawnLate(fragment));

/** The line of work that wrote the present entry of the history. */
export function lineOfEntry(): string | undefined {
  const state: unknown = window.history.state;
  const line = typeof state === 'object' && state !== null && 'line' in state ? state.line : undefined;
  return typeof line === 'string' ? line : undefined;
}

/** The name of this tab's line of work. */
export const lineNow = (): string => mark.line;

function lastMark(): Mark | undefined {
  const [line, fragment, earlier = ''] = (recall(SESSION, 'sessionStorage') ?? '').split(' ');
  return line && fragment !== undefined ? { line, fragment, earlier: earlier.split(',') } : undefined;
}

const belongs = (line: string | undefined, { line: ours, earlier }: Mark): boolean =>
  line !== undefined && (line === ours || earlier.includes(line));

/** Whether a line of work is the one in hand, or went on into it. */
export const isOurLine = (line: string | undefined): boolean => belongs(line, mark);

function keep(now: Mark): void {
  mark = now;
  const { line, fragment, earlier } = now;
  remember(SESSION, [line, fragment, earlier.join(',')].join(' '), 'sessionStorage');
  document.dispatchEvent(new CustomEvent('halfnut:path', { detail: fragment }));
}

/** The line of work that this tab had in hand last, on whichever page. */
export const lastLine = (): string | undefined => lastMark()?.line;

/** What a page just opened stands for: the address, or this tab's newest where Back led here. */
export function arrival(): Arrival {
  const last = lastMark();
  const here = isAnchor(fragmentNow()) ? '' : fragmentNow();
  const ours = last && (belongs(lineOfEntry(), last) || (here !== '' && here === last.fragment));
  if (!ours) return { line: lineOfEntry(), fragment: here };
  mark = last;
  return last;
}

/** After a step in the history: what to open, or undefined where the path in hand goes on. */
export function arrivalAfterStep(): Arrival | undefined {
  const here = fragmentNow();
  if (belongs(lineOfEntry(), mark) || isAnchor(here) || here === mark.fragment) return undefined;
  return { line: lineOfEntry(), fragment: here };
}

/** Takes a line of work in hand; the address stays as it was typed. */
export function takeLine(line: string, fragment: string): void {
  keep({ line, fragment, earlier: line === mark.line ? mark.earlier : [] });
  window.history.replaceState({ line }, '', window.location.href);
}

/** The line in hand goes on under another name: entries of the history that it wrote lead here. */
export function renameLine(line: string): void {
  if (line !== mark.line) mark = { ...mark, line, earlier: [...mark.earlier, mark.line].filter(Boolean) };
}

/** Writes the path into the present entry of the history. */
export function writeFragment(fragment: string): void {
  keep({ ...mark, fragment });
  const { pathname, search } = window.location;
  window.history.replaceState({ line: mark.line }, '', `${pathname}${search}#${fragment}${tail}`);
}

/** Goes to another page of this site without loading it; the path comes along. */
export function pushPlace(href: string): void {
  const url = new URL(href, window.location.href);
  window.history.pushState({ line: mark.line }, '', `${url.pathname}${url.search}#${mark.fragment}`);
}
