// Random pairs of paths that differ in a known number of things, and a plain way to work out their mixtures.
import fc from 'fast-check';
import type { Piece } from '../../../../src/calc/comparing.ts';
import type { SizeClass } from '../../../../src/calc/core/machine.ts';
import type { Answer, Path } from '../../../../src/calc/core/path.ts';
import { evaluate } from '../../../../src/calc/evaluate.ts';
import { facts } from '../../../../src/calc/facts.ts';
import { decisions } from '../../../../src/calc/guide.ts';
import { parts } from '../../../../src/calc/trade.ts';
import { editionByName, editions } from '../../../../src/content/edition.ts';
import { referencePaths } from '../../../../src/content/reference-paths.ts';

export const bookOf = (edition: string) => editionByName(edition)!;

export type Pair = readonly [a: Path, b: Path];

type Change = (path: Path) => Path;

const change =
  (make: (path: Path) => Partial<Path>): Change =>
  (path) => ({ ...path, ...make(path) });

const answering: fc.Arbitrary<Change> = fc
  .constantFrom(...decisions)
  .chain(({ id, options }) =>
    fc
      .constantFrom(...options)
      .map((option) => change(({ answers }) => ({ answers: { ...answers, [id]: [option.id] as Answer } }))),
  );
const opening: fc.Arbitrary<Change> = fc
  .constantFrom(...decisions)
  .map(({ id }) => change(({ answers: { [id]: _was, ...answers } }) => ({ answers })));
const measuring: fc.Arbitrary<Change> = fc
  .constantFrom(...facts)
  .chain(({ id, sense }) =>
    fc
      .double({ min: sense[0], max: sense[1], noNaN: true })
      .map((value) => change((path) => ({ facts: { ...path.facts, [id]: Number(value.toPrecision(4)) } }))),
  );
const sizing: fc.Arbitrary<Change> = fc
  .constantFrom<SizeClass>('small', 'medium', 'large')
  .map((size) => change(() => ({ size })));
const owning: fc.Arbitrary<Change> = fc
  .subarray(
    parts.map(({ id }) => id),
    { maxLength: 8 },
  )
  .map((owned) => change(() => ({ owned })));
const dating: fc.Arbitrary<Change> = fc
  .constantFrom(...editions)
  .map(({ edition }) => change(() => ({ edition })));
const guessing: fc.Arbitrary<Change> = fc
  .double({ min: 0, max: 1, noNaN: true })
  .map((chance) => change(() => ({ chances: { 'electrical-noise': chance } })));
const quoting: fc.Arbitrary<Change> = fc
  .integer({ min: 100, max: 90_000 })
  .map((cents) =>
    change(() => ({ purchases: { cable: { state: 'quoted' as const, price: (cents / 100).toFixed(2) } } })),
  );

const anyChange: fc.Arbitrary<Change> = fc.oneof(
  { weight: 40, arbitrary: answering },
  { weight: 1, arbitrary: opening },
  { weight: 4, arbitrary: measuring },
  { weight: 1, arbitrary: sizing },
  { weight: 1, arbitrary: owning },
  { weight: 1, arbitrary: dating },
  { weight: 1, arbitrary: guessing },
  { weight: 1, arbitrary: quoting },
);

/** Two paths that start from a path worked right through and part in so many changes; some may come to nothing. */
export const partingIn = (minLength: number, maxLength: number, by = anyChange): fc.Arbitrary<Pair> =>
  fc
    .tuple(
      fc.constantFrom(...referencePaths.map(({ path }) => path)),
      fc.array(by, { minLength: 0, maxLength: 3 }),
      fc.array(by, { minLength, maxLength }),
    )
    .map(([path, both, one]) => {
      const b = both.reduce((made, each) => each(made), path);
      return [one.reduce((made, each) => each(made), b), b] as const;
    });

export const byAnswers = answering;

/** Some pieces as the first path has them, the rest as the second: written out field by field. */
export function mixture([a, b]: Pair, pieces: readonly Piece[], bits: number): Path {
  const [answers, given]: [Record<string, Answer>, Record<string, number>] = [
    { ...b.answers },
    { ...b.facts },
  ];
  const path: { -readonly [K in keyof Path]: Path[K] } = { ...b, answers, facts: given };
  const put = <K extends keyof Path>(key: K): void => {
    delete path[key];
    if (a[key] !== undefined) path[key] = a[key];
  };
  for (const [at, piece] of pieces.entries()) {
    if (((bits >> at) & 1) === 0) continue;
    if (piece.kind === 'answer') answers[piece.decision] = piece.a;
    else if (piece.kind === 'fact') {
      delete given[piece.fact];
      if (piece.a !== undefined) given[piece.fact] = piece.a;
    } else if (piece.kind === 'size') put('size');
    else if (piece.kind === 'edition') put('edition');
    else if (piece.kind === 'drawer') put('owned');
    else if (piece.kind === 'chances') for (const key of ['chances', 'allowance'] as const) put(key);
    else for (const key of ['purchases', 'sellers', 'currency'] as const) put(key);
  }
  return path;
}

/** Typical figures of a path from its report, in whole cents and hundredths of an hour; a millionth below a half is a half. */
export function typicalFigures(path: Path): { money: number; hours: number } {
  const { money, hours } = evaluate(path, bookOf(path.edition));
  const whole = (figure: number): number => Math.floor(100 * figure + 0.5 + 1e-6);
  return { money: whole(money.p50), hours: whole(hours.p50) };
}
