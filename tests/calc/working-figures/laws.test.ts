// What the figures say, held against figures that somebody printed, and laws that hold whatever is put in.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { whyNumber } from '../../../src/calc/why-number.ts';
import { batch } from '../../../src/calc/working-figures/batch.ts';
import { bend } from '../../../src/calc/working-figures/bend.ts';
import { exampleOf, type Values, type WorkingFigure } from '../../../src/calc/working-figures/figure.ts';
import { workingFigures } from '../../../src/calc/working-figures/list.ts';
import { play } from '../../../src/calc/working-figures/play.ts';
import { whip } from '../../../src/calc/working-figures/whip.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { tolerance } from '../../published/row.ts';
import { rows } from '../../published/rows.ts';

const RUNS = { numRuns: 100 };

/** What a row of the table says, in the unit that it is written in. */
function said(figure: WorkingFigure, id: string, values: Values): number {
  const row = figure.answer(values).rows.find((each) => each.id === id)!;
  return row.value * row.written.per;
}

const within = (figure: WorkingFigure) =>
  fc.record(
    Object.fromEntries(
      figure.inputs.map(({ id, low, high, written }) => [
        id,
        fc.double({ min: low / written.per, max: high / written.per, noNaN: true }),
      ]),
    ),
  );

describe('against printed figures', () => {
  const printed = (formula: string, needs: (inputs: Readonly<Record<string, unknown>>) => boolean) =>
    rows.filter((row) => row.formula === formula && needs(row.inputs));
  const heldSo = ({ endFixity }: Readonly<Record<string, unknown>>) => endFixity === 'fixed-supported';

  test.each(printed('screw-whirl-speed', heldSo).filter(({ unit }) => unit === 'turns a minute'))(
    'whip: $what',
    (row) => {
      const { rootDiameter: root, length } = row.inputs as Record<string, number>;
      const ours = said(whip, 'held', { root: root!, length: length!, turning: 1 });
      expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
    },
  );

  test.each(printed('break-even-pieces', ({ savedPerPiece }) => savedPerPiece !== 0.8))(
    'batch: $what',
    (row) => {
      const { once, savedPerPiece } = row.inputs as Record<string, number>;
      const ours = said(batch, 'first', {
        program: once!,
        byHand: savedPerPiece!,
        attended: 0,
        pieces: 1,
      });
      expect(ours).toBe(Number(row.printed));
    },
  );
});

describe('laws', () => {
  test.each([whip, bend])(
    '$id: a longer screw stands never more, a far end supported never less',
    (figure) => {
      fc.assert(
        fc.property(within(figure), fc.double({ min: 1, max: 3, noNaN: true }), (values, times) => {
          const longer = { ...values, length: values.length! * times };
          for (const id of ['held', 'free'])
            expect(said(figure, id, longer)).toBeLessThanOrEqual(said(figure, id, values));
          expect(said(figure, 'held', values)).toBeGreaterThanOrEqual(said(figure, 'free', values));
        }),
        RUNS,
      );
    },
  );

  test('play: the parts of the error add up to it', () => {
    fc.assert(
      fc.property(within(play), (values) => {
        const parts = said(play, 'fromNut', values) + said(play, 'fromBearing', values);
        expect(parts).toBeCloseTo(said(play, 'error', values), 9);
      }),
      RUNS,
    );
  });

  test('batch: from the piece that is named on, a program takes no more hours than the hand, and before it more', () => {
    fc.assert(
      fc.property(within(batch), (values) => {
        if (!(values.byHand! > values.attended! + 1)) return;
        const first = said(batch, 'first', values);
        const gain = (pieces: number) =>
          said(batch, 'hand', { ...values, pieces }) - said(batch, 'run', { ...values, pieces });
        expect(gain(first)).toBeGreaterThanOrEqual(-1e-6);
        if (first > 1) expect(gain(first - 1)).toBeLessThanOrEqual(1e-6);
      }),
      RUNS,
    );
  });

  test('batch: what takes no less time by program never pays, and says so', () => {
    const never = batch.answer({ ...exampleOf(batch), byHand: 60, attended: 60 });
    expect(never.say).toContain('never pays');
    expect(never.rows.map(({ id }) => id)).not.toContain('first');
  });
});

test.each(
  workingFigures.flatMap(({ id, inputs }) =>
    inputs.flatMap((input) => (input.own ? [{ id, input, own: input.own }] : [])),
  ),
)('$id: $own of a path has the unit of its input', ({ input, own }) => {
  const found = referencePaths.flatMap(
    ({ path }) => whyNumber(path, currentEdition, { kind: 'figure', id: own }) ?? [],
  );
  expect(found.length).toBeGreaterThan(0);
  expect(found.map(({ unit }) => unit)).toEqual(found.map(() => input.unit));
});
