// What the figures say, held against figures that somebody printed, and laws that hold whatever is put in.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designFigures } from '../../../src/calc/why-number.ts';
import { batch } from '../../../src/calc/working-figures/batch.ts';
import { belt } from '../../../src/calc/working-figures/belt.ts';
import { bend } from '../../../src/calc/working-figures/bend.ts';
import { drill } from '../../../src/calc/working-figures/drill.ts';
import { edges } from '../../../src/calc/working-figures/edges.ts';
import { exampleOf } from '../../../src/calc/working-figures/figure.ts';
import { heat } from '../../../src/calc/working-figures/heat.ts';
import { workingFigures } from '../../../src/calc/working-figures/list.ts';
import { play } from '../../../src/calc/working-figures/play.ts';
import { runUp } from '../../../src/calc/working-figures/run-up.ts';
import { whip } from '../../../src/calc/working-figures/whip.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { tolerance } from '../../published/row.ts';
import { printed, RUNS, said, within } from './said.ts';

describe('against printed figures', () => {
  const heldSo = ({ endFixity }: Readonly<Record<string, unknown>>) => endFixity === 'fixed-supported';

  test.each(printed('screw-whirl-speed', heldSo).filter(({ unit }) => unit === 'turns a minute'))(
    'whip: $what',
    (row) => {
      const { rootDiameter: root, length } = row.inputs as Record<string, number>;
      const ours = said(whip, 'held', { root: root!, length: length!, turning: 1 });
      expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
    },
  );

  test.each(printed('screw-buckling-load', heldSo).filter(({ unit }) => unit === 'N'))(
    'bend: $what',
    (row) => {
      const { rootDiameter: root, length } = row.inputs as Record<string, number>;
      const ours = said(bend, 'held', { root: root!, length: length!, push: 1 });
      expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
    },
  );

  test.each(printed('encoder-edge-rate', ({ speed }) => speed === 1))('edges: $what', (row) => {
    const { lines, speed } = row.inputs as Record<string, number>;
    const ours = said(edges, 'edges', { lines: lines!, speed: speed!, most: 1 }) * 1000;
    expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
  });

  test.each(printed('belt-least-centres', () => true))('belt: $what', (row) => {
    const { teethSmall: motor, teethLarge: screw, pitch } = row.inputs as Record<string, number>;
    const ours = said(belt, 'touching', { motor: motor!, screw: screw!, pitch: pitch!, wanted: 0.1 });
    expect(Math.abs(ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
  });

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
  const found = referencePaths.flatMap(({ path }) => designFigures(path, [own])[own] ?? []);
  expect(found.length).toBeGreaterThan(0);
  expect(found.map(({ unit }) => unit)).toEqual(found.map(() => input.unit));
});

describe('laws of threads, counts and heat', () => {
  test('run-up: a faster spindle or a coarser pitch never asks for less room, a livelier carriage never for more', () => {
    fc.assert(
      fc.property(within(runUp), fc.double({ min: 1, max: 4, noNaN: true }), (values, times) => {
        const room = (id: string) => said(runUp, 'room', { ...values, [id]: values[id]! * times });
        const now = said(runUp, 'room', values);
        expect(room('speed')).toBeGreaterThanOrEqual(now);
        expect(room('pitch')).toBeGreaterThanOrEqual(now);
        expect(room('acceleration')).toBeLessThanOrEqual(now);
      }),
      RUNS,
    );
  });

  test('edges: twice the lines send twice the counts, and the sentence follows the half of what is counted', () => {
    fc.assert(
      fc.property(within(edges), (values) => {
        const twice = said(edges, 'edges', { ...values, lines: values.lines! * 2 });
        expect(twice).toBeCloseTo(2 * said(edges, 'edges', values), 6);
        const isSafe = said(edges, 'edges', values) <= said(edges, 'half', values);
        expect(edges.answer(values).say.includes('under half')).toBe(isSafe);
      }),
      RUNS,
    );
  });

  test('heat: more watts never cool, a larger box never warms, and the room is added whole', () => {
    fc.assert(
      fc.property(within(heat), fc.double({ min: 1, max: 4, noNaN: true }), (values, times) => {
        const rise = (id: string) => said(heat, 'rise', { ...values, [id]: values[id]! * times });
        const now = said(heat, 'rise', values);
        expect(rise('loss')).toBeGreaterThanOrEqual(now);
        for (const id of ['height', 'width', 'depth']) expect(rise(id)).toBeLessThanOrEqual(now);
        expect(said(heat, 'inside', values)).toBeCloseTo(values.room! + now, 9);
      }),
      RUNS,
    );
  });
});

describe('laws of drills and belts', () => {
  test('drill: a thicker drill or more feed never asks for less, and steel for more than aluminium', () => {
    fc.assert(
      fc.property(within(drill), fc.double({ min: 1, max: 3, noNaN: true }), (values, times) => {
        const now = said(drill, 'steel', values);
        for (const id of ['diameter', 'feed'])
          expect(said(drill, 'steel', { ...values, [id]: values[id]! * times })).toBeGreaterThanOrEqual(now);
        expect(said(drill, 'aluminium', values)).toBeLessThan(now);
      }),
      RUNS,
    );
  });

  test('belt: the nearest whole belt lies within half a pitch of the wanted distance', () => {
    const whole = fc.integer({ min: 10, max: 60 });
    fc.assert(
      fc.property(whole, whole, fc.double({ min: 0.1, max: 0.4, noNaN: true }), (motor, screw, wanted) => {
        const touching = (0.003 * (motor + screw)) / (2 * Math.PI);
        if (wanted < touching * 1.3) return;
        const centres = said(belt, 'centres', { motor, screw, pitch: 0.003, wanted }) / 1000;
        expect(Math.abs(centres - wanted)).toBeLessThan(0.003 / 2);
      }),
      RUNS,
    );
  });

  test('belt: pulleys that do not fit are told so, and get the shortest belt that fits', () => {
    const tight = belt.answer({ motor: 40, screw: 40, pitch: 0.005, wanted: 0.03 });
    expect(tight.say).toContain('do not fit');
    const centres = tight.rows.find(({ id }) => id === 'centres')!.value;
    expect(centres).toBeGreaterThanOrEqual((40 * 0.005) / Math.PI - 1e-9);
    expect(centres).toBeLessThan((40 * 0.005) / Math.PI + 0.005);
  });
});
