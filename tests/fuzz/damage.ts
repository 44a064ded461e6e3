// Texts as they come to harm: cut, doubled, mixed with others, nested, in the wrong letters.
import fc from 'fast-check';

/** What a text of ours must not be broken by, wherever it stands. */
const SPLINTERS = [
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty', '{"__proto__":{"polluted":1}}'],
  ...['NaN', '-Infinity', '1e999', '-0', '0x10', '1e-400', '9'.repeat(400), 'null', 'true', '[]', '{}', '""'],
  ...[
    '%',
    '%00',
    '%zz',
    '%F0%9F',
    '\u0000',
    '\uFEFF',
    '\uD800',
    '\uDFFF\uD83D',
    'e\u0301',
    '\u202E',
    'ﬁ',
    '１２',
  ],
  ...[
    '"',
    '\\',
    '\\u0000',
    '\\ud800',
    ',',
    ';',
    ':',
    '=',
    '&',
    '#',
    '?',
    '/',
    '\t',
    '\r',
    '\n',
    "'",
    '=1+1',
    '@x',
  ],
  ...[
    'not-sure',
    'size=large',
    'edition=1999-01',
    'edition=2026-11',
    'without=size',
    'alternative=',
    '1?',
    '2?',
  ],
];

const splinter = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...SPLINTERS) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 8 }) },
);

/** A place in a text, as a share of its length. */
const place = fc.double({ min: 0, max: 1, noNaN: true });

type Harm = (text: string) => string;

const at = (text: string, share: number): number => Math.floor(text.length * share);

const harm: fc.Arbitrary<Harm> = fc.oneof(
  fc.tuple(place, splinter).map(
    ([p, piece]): Harm =>
      (text) => {
        const here = at(text, p);
        return text.slice(0, here) + piece + text.slice(here);
      },
  ),
  fc.tuple(place, fc.integer({ min: 1, max: 12 }), splinter).map(
    ([p, length, piece]): Harm =>
      (text) => {
        const here = at(text, p);
        return text.slice(0, here) + piece + text.slice(here + length);
      },
  ),
  fc.tuple(place, place).map(
    ([a, b]): Harm =>
      (text) => {
        const [from, to] = [at(text, Math.min(a, b)), at(text, Math.max(a, b))];
        return text.slice(0, from) + text.slice(to);
      },
  ),
  fc.tuple(place, place, fc.integer({ min: 2, max: 4 })).map(
    ([a, b, times]): Harm =>
      (text) => {
        const [from, to] = [at(text, Math.min(a, b)), at(text, Math.max(a, b))];
        return (
          text.slice(0, from) + text.slice(from, Math.min(to, from + 400)).repeat(times) + text.slice(to)
        );
      },
  ),
  place.map(
    (p): Harm =>
      (text) =>
        text.slice(0, at(text, p)),
  ),
  fc.constantFrom<Harm>(
    (text) => text.toUpperCase(),
    (text) => text + text,
    (text) => [...text].reverse().join(''),
    (text) => text.replaceAll('"', "'"),
    (text) => encodeURI(text.toWellFormed()),
  ),
);

/** The same texts, whole or harmed in up to six places. */
export const damaged = (texts: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .tuple(texts, fc.array(harm, { maxLength: 6 }))
    .map(([text, harms]) => harms.reduce((each, by) => by(each), text));

const nested = fc
  .tuple(fc.integer({ min: 1, max: 20_000 }), fc.constantFrom('[', '{"path":', '{"paths":[', '[[{"a":'))
  .map(([depth, open]) => open.repeat(depth));

/** Texts that never were ours. */
export const foreign: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
  { weight: 4, arbitrary: fc.json({ maxDepth: 6 }) },
  { weight: 4, arbitrary: fc.array(splinter, { maxLength: 40 }).map((pieces) => pieces.join('')) },
  { weight: 1, arbitrary: nested },
  {
    weight: 1,
    arbitrary: fc.tuple(splinter, fc.integer({ min: 1, max: 5000 })).map(([s, n]) => s.repeat(n)),
  },
);

/** JSON of ours with one value in it put in the place of another, so that it stays JSON and says something else. */
export const transplanted = (texts: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .tuple(texts, place, fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constantFrom(...SPLINTERS)))
    .map(([text, p, value]) => {
      const whole: unknown = JSON.parse(text);
      const spots = spotsOf(whole);
      const spot = spots[at(spots.length === 1 ? ' ' : ' '.repeat(spots.length - 1), p)];
      if (spot) spot.holder[spot.key] = value;
      return JSON.stringify(whole);
    });

interface Spot {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

function spotsOf(value: unknown): Spot[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...spotsOf(holder[key])]);
}
