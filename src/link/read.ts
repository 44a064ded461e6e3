import type { SizeClass } from '../calc/core/machine.ts';
import type { Answer, Path } from '../calc/core/path.ts';
import { emptyPath } from '../calc/core/path.ts';
import { nothingDone, type Progress } from '../calc/core/progress.ts';
import { factById } from '../calc/facts.ts';
import { decisionById } from '../calc/guide.ts';
import { fromLink, NOT_SURE, nowCalled, VERSION } from './grammar.ts';
import { firstOf } from './pairs.ts';
import { isPriceKey, type PriceKey, type Prices } from './prices.ts';
import { isProgressKey, type ProgressKey, readProgressPair } from './progress.ts';
import { type KnownPrices, readPricePair } from './read-prices.ts';

/** Something in a link that could not be used as it stands. Shown once; nothing is dropped silently. */
export interface LinkNote {
  readonly kind:
    | 'not-a-path'
    | 'other-version'
    | 'unknown-key'
    | 'unknown-answer'
    | 'not-a-number'
    | 'other-edition'
    | 'twice';
  readonly say: string;
}

export interface Decoded {
  readonly path: Path;
  readonly notes: readonly LinkNote[];
  /** False when nothing of the link could be read. */
  readonly readable: boolean;
}

/** What decoding has to know besides the ids of the trade. */
export interface Known extends KnownPrices {
  readonly editions: readonly string[];
  readonly currentEdition: string;
}

interface Draft extends Prices {
  edition: string;
  size: SizeClass;
  readonly facts: Record<string, number>;
  readonly answers: Record<string, Answer>;
  owned: string[];
  progress?: Progress;
}

const sizes: readonly string[] = ['small', 'medium', 'large'];

/** Longest piece of a link repeated in a note. */
const QUOTED = 60;

const quote = (text: string): string => (text.length > QUOTED ? `${text.slice(0, QUOTED)}…` : text);

/**
 * Reads a fragment, with or without its '#'. Never throws, never guesses: what cannot be read is listed in the notes and
 * left out. An empty fragment is an empty path; of a comparison the first path is read.
 */
export function decodeFragment(fragment: string, known: Known): Decoded {
  const text = firstOf(fragment);
  const empty = emptyPath(known.currentEdition);
  if (text === '') return { path: empty, notes: [], readable: true };
  const mark = text.indexOf('?');
  const version = mark < 0 ? '' : text.slice(0, mark);
  if (!/^\d{1,4}$/.test(version)) return { path: empty, notes: [notAPath(text)], readable: false };
  if (version !== VERSION) return { path: empty, notes: [otherVersion(version)], readable: false };
  return readPairs(text.slice(mark + 1), empty, known);
}

const notAPath = (text: string): LinkNote => ({
  kind: 'not-a-path',
  say: `This link does not hold a path: “${quote(text)}”. An empty sheet is open instead.`,
});

const otherVersion = (version: string): LinkNote => ({
  kind: 'other-version',
  say: `This link is written in version ${version} of the links; this site reads version ${VERSION}. An empty sheet is open instead.`,
});

function readPairs(query: string, empty: Path, known: Known): Decoded {
  const draft: Draft = { edition: empty.edition, size: empty.size, facts: {}, answers: {}, owned: [] };
  const notes: LinkNote[] = [];
  const seen = new Set<string>();
  for (const pair of query.split('&')) {
    if (pair === '') continue;
    const equals = pair.indexOf('=');
    const key = nowCalled(unescaped(equals < 0 ? pair : pair.slice(0, equals)));
    const value = equals < 0 ? '' : unescaped(pair.slice(equals + 1));
    const note = seen.has(key) ? twice(key) : readPair(draft, key, value, known);
    seen.add(key);
    if (note) notes.push(...[note].flat());
  }
  return { path: draft, notes, readable: true };
}

/** Percent escapes undone; a broken escape is left as it was written. */
function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

const twice = (key: string): LinkNote => ({
  kind: 'twice',
  say: `“${quote(key)}” stands in the link twice. The first is used.`,
});

function readPair(draft: Draft, key: string, value: string, known: Known): LinkNote | LinkNote[] | undefined {
  if (key === 'edition') return readEdition(draft, value, known);
  if (key === 'size') return readSize(draft, value);
  if (key === 'have') return readOwned(draft, value, known);
  if (isProgressKey(key)) return readJob(draft, key, value);
  if (isPriceKey(key)) return readPrices(draft, key, value, known);
  if (factById(key)) return readFact(draft, key, value);
  if (decisionById(key)) return readAnswer(draft, key, value);
  return {
    kind: 'unknown-key',
    say: `“${quote(key)}” is not a question or a figure that this site knows. It was left out.`,
  };
}

function readEdition(draft: Draft, value: string, known: Known): LinkNote | undefined {
  if (known.editions.includes(value)) {
    draft.edition = value;
    return undefined;
  }
  return {
    kind: 'other-edition',
    say: `The prices of edition “${quote(value)}” are not here. Edition ${known.currentEdition} is used instead, so the figures may differ.`,
  };
}

function readSize(draft: Draft, value: string): LinkNote | undefined {
  if (!sizes.includes(value)) return unknownAnswer('size of lathe', value);
  draft.size = value as SizeClass;
  return undefined;
}

function readOwned(draft: Draft, value: string, known: Known): LinkNote[] {
  const named = [
    ...new Set(
      value
        .split(',')
        .filter((id) => id !== '')
        .map(nowCalled),
    ),
  ];
  draft.owned = named.filter((id) => known.parts.has(id));
  return named.filter((id) => !known.parts.has(id)).map((id) => unknownAnswer('what you already have', id));
}

/** Ticks, readings and hours that somebody put into the link. */
function readJob(draft: Draft, key: ProgressKey, value: string): LinkNote[] {
  const { progress, odd } = readProgressPair(key, value);
  draft.progress = { ...(draft.progress ?? nothingDone), ...progress };
  return odd.map((piece) => ({
    kind: 'unknown-answer',
    say: `What was done: “${quote(piece)}” cannot be read. It was left out.`,
  }));
}

const about: Readonly<Record<PriceKey, string>> = {
  orders: 'Prices and orders',
  shops: 'Terms of shops',
  money: 'The currency',
  chances: 'Own chances',
  allowance: 'The allowance for trouble',
  'first-day': 'The first day',
  families: 'Parts made again and again',
};

/** Prices, orders and shops' terms that somebody put into the link. */
function readPrices(draft: Draft, key: PriceKey, value: string, known: Known): LinkNote[] {
  const { prices, odd } = readPricePair(key, value, known);
  Object.assign(draft, prices);
  return odd.map((piece) => ({
    kind: 'unknown-answer',
    say: `${about[key]}: “${quote(piece)}” cannot be read. It was left out.`,
  }));
}

function readFact(draft: Draft, key: string, value: string): LinkNote | undefined {
  const fact = factById(key)!;
  const written = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(value) ? Number(value) : Number.NaN;
  if (!Number.isFinite(written)) {
    return {
      kind: 'not-a-number',
      say: `${fact.name}: “${quote(value)}” is not a number. The typical figure is used.`,
    };
  }
  draft.facts[key] = fromLink(fact, written);
  return undefined;
}

function readAnswer(draft: Draft, key: string, value: string): LinkNote[] | LinkNote | undefined {
  const decision = decisionById(key)!;
  if (value === NOT_SURE) {
    draft.answers[key] = [];
    return undefined;
  }
  const named = [...new Set(value.split(',').map(nowCalled))];
  const valid = named.filter((id) => decision.options.some((option) => option.id === id));
  const kept = decision.many ? valid : valid.slice(0, 1);
  if (kept.length > 0) draft.answers[key] = kept;
  return named.filter((id) => !kept.includes(id)).map((id) => unknownAnswer(decision.name, id));
}

const unknownAnswer = (question: string, value: string): LinkNote => ({
  kind: 'unknown-answer',
  say: `${question}: “${quote(value)}” is not an answer that this site knows. The question is open.`,
});
