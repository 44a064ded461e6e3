import { sizeNames } from '../../calc/facts.ts';
import { counted, listed } from '../shared/format.ts';
import { answersIn } from './called.ts';
import type { BroughtIn } from './file-work.ts';
import type { KeptPath } from './kept-paths.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Medium lathe, 24 answers, 3 figures of your own, 2 parts in the drawer". */
export function aboutPath({ path }: KeptPath): string {
  const figures = Object.keys(path.facts).length;
  return [
    `${capital(sizeNames[path.size])} lathe`,
    answersIn(path),
    ...(figures > 0 ? [`${counted(figures, 'figure')} of your own`] : []),
    ...(path.owned.length > 0 ? [`${counted(path.owned.length, 'part')} in the drawer`] : []),
    `prices of edition ${path.edition}`,
  ].join(', ');
}

const two = (n: number): string => String(n).padStart(2, '0');

/** The day of a moment by the clock of this device, ISO 8601; an empty text where there is none. */
export function dayOf(moment: string | undefined): string {
  const at = new Date(moment ?? '');
  return Number.isNaN(at.getTime())
    ? ''
    : `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** "Made 2026-12-01, changed 2026-12-03", or an empty text for a path kept before days were. */
export function daysOf({ made, changed }: KeptPath): string {
  const [first, last] = [dayOf(made), dayOf(changed)];
  const words = [first ? `made ${first}` : '', last && last !== first ? `changed ${last}` : ''];
  return capital(words.filter(Boolean).join(', '));
}

const these = (names: readonly string[], verb: string): string =>
  names.length === 0
    ? ''
    : `${counted(names.length, 'path')} ${verb}: ${listed(names.slice(0, 5).map((name) => `“${name}”`))}${names.length > 5 ? ' …' : ''}.`;

/** What became of a file, in a sentence or two. */
export function sayBroughtIn({ added, already, without }: BroughtIn): string {
  const said = [
    these(added, 'added'),
    these(
      already,
      already.length === 1 ? 'is there already and was left alone' : 'are there already and were left alone',
    ),
    these(without, 'found no room on this device; the file still holds what it held'),
  ];
  return said.filter(Boolean).join(' ') || 'Nothing was added.';
}
