import { firstOf } from '../link/pairs.ts';
import { recall, remember } from './memory.ts';

/**
 * The address bar holds the path. Entries of the history that this tab wrote carry the name of their line of work, so
 * that going back to one keeps later answers, while a link typed or pasted in between is taken as it stands.
 */
interface Mark {
  readonly line: string;
  readonly fragment: string;
}

const SESSION = 'line';
let mark: Mark = { line: '', fragment: '' };

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
const isAnchor = (fragment: string): boolean => fragment !== '' && document.getElementById(fragment) !== null;

function lineOfEntry(): unknown {
  const state: unknown = window.history.state;
  return typeof state === 'object' && state !== null && 'line' in state ? state.line : undefined;
}

/** The name of this tab's line of work. */
export const lineNow = (): string => mark.line;

/** Whether the present entry of the history was written by this line of work. */
export const isOurEntry = (): boolean => lineOfEntry() === mark.line;

function lastMark(): Mark | undefined {
  const [line, fragment] = (recall(SESSION, 'sessionStorage') ?? '').split(' ');
  return line && fragment !== undefined ? { line, fragment } : undefined;
}

function keep(line: string, fragment: string): void {
  mark = { line, fragment };
  remember(SESSION, `${line} ${fragment}`, 'sessionStorage');
  document.dispatchEvent(new CustomEvent('halfnut:path', { detail: fragment }));
}

/** The fragment that a page just opened stands for: the address, or this tab's newest where Back led here. */
export function openingFragment(): string {
  const last = lastMark();
  const here = isAnchor(fragmentNow()) ? '' : fragmentNow();
  const ours = last !== undefined && (lineOfEntry() === last.line || (here !== '' && here === last.fragment));
  const fragment = ours ? last.fragment : here;
  keep(ours ? last.line : Date.now().toString(36), fragment);
  window.history.replaceState({ line: mark.line }, '', window.location.href);
  return fragment;
}

/** After a step in the history: a fragment to open, or undefined where the path in hand goes on. */
export function fragmentAfterStep(): string | undefined {
  const here = fragmentNow();
  if (lineOfEntry() === mark.line || isAnchor(here) || here === mark.fragment) return undefined;
  keep(Date.now().toString(36), here);
  window.history.replaceState({ line: mark.line }, '', window.location.href);
  return here;
}

/** Writes the path into the present entry of the history. */
export function writeFragment(fragment: string): void {
  keep(mark.line, fragment);
  const { pathname, search } = window.location;
  window.history.replaceState({ line: mark.line }, '', `${pathname}${search}#${fragment}${tail}`);
}

/** Goes to another page of this site without loading it; the path comes along. */
export function pushPlace(href: string): void {
  const url = new URL(href, window.location.href);
  window.history.pushState({ line: mark.line }, '', `${url.pathname}${url.search}#${mark.fragment}`);
}
