// Two owners worked by an old hand of the trade, and six made up here whose right answers differ; each argued beside it.
import { describe, expect, test } from 'vitest';
import type { Family } from '../../../src/calc/core/family.ts';
import type { Path } from '../../../src/calc/core/path.ts';
import { presentOf } from '../../../src/calc/paths/present.ts';
import { columnOrder } from '../../../src/calc/worth/columns.ts';
import type { WorthVerdict } from '../../../src/calc/worth/verdict.ts';
import { worthOf } from '../../../src/calc/worth/worth.ts';
import { alternatives } from '../../../src/content/alternatives.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { inventedOwners } from '../../../src/content/invented-owners.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { showIn } from '../../../src/islands/shared/currency.ts';
import { sentenceText } from '../../../src/islands/shared/sentence.ts';

function askedBy(path: Path, families: readonly Family[] = path.families ?? []) {
  const worth = worthOf(path, currentEdition, families, alternatives);
  const { state } = presentOf(path, currentEdition).planned;
  return { ...worth, columns: columnOrder(state, worth.verdict, alternatives) };
}

const said = ({ say }: WorthVerdict): string => say.map(sentenceText).join(' ');

const owner = (id: string) => askedBy(inventedOwners.find((each) => each.id === id)!.path);

describe('an occasional user of a small lathe who wants metric and inch threads', () => {
  const { verdict, columns } = askedBy(
    pathOf(
      { purpose: ['thread-cutting', 'one-off-repairs'], 'thread-kinds': ['metric-threads', 'inch-threads'] },
      'small',
    ),
  );

  test('is told of a thread synchroniser, or of change gears for a thread now and then', () => {
    expect(verdict.id).toBe('thread-synchroniser');
    expect(said(verdict)).toContain('once a month');
  });

  test('sees both before any full conversion', () => {
    const full = Math.min(columns.indexOf('conversion'), columns.indexOf('usual-conversion'));
    expect(columns.indexOf('change-gears')).toBeLessThan(full);
    expect(columns.indexOf('thread-synchroniser')).toBeLessThan(full);
  });
});

describe('batches of thirty in brass beside a second lathe', () => {
  const path = pathOf({
    purpose: 'repeat-batches',
    'which-lathe': 'spare-lathe',
    'cross-nut': 'cross-double-nut',
  });
  const knobs: Family = {
    name: 'Knobs',
    piecesPerBatch: 30,
    batchesPerYear: 12,
    byHand: { setUp: 0.5, piece: 12 / 60 },
    byProgram: { firstSetUp: 2, setUp: 0.4, attended: 3.5 / 60 },
  };

  test('are a sound case under conditions, turret and buying among the first three columns', () => {
    const { verdict, columns } = askedBy(path, [knobs]);
    expect(verdict.id).toBe('convert-conditional');
    expect(columns.slice(0, 3)).toEqual(
      expect.arrayContaining(['tailstock-turret', 'conversion', 'send-out']),
    );
    expect(said(verdict)).toMatch(/four years/);
  });

  test('turn strong when the parts are bought today', () => {
    const { payback } = askedBy(path, [{ ...knobs, outsidePrice: 9 }]);
    expect(
      payback.find(({ perHour, buildingCounts }) => perHour === 0 && !buildingCounts)!.typical,
    ).toBeLessThan(4);
  });
});

/** Single parts lose their time on measuring, not on turning: a readout gives it back for a weekend's work. */
test('who measures more than they turn gets a readout', () => {
  const { verdict, columns, signals } = owner('measures-more-than-turns');
  expect(verdict).toMatchObject({ answer: 'readout', weight: 'think' });
  expect(columns[0]).toBe('readout');
  expect(columns.indexOf('conversion')).toBeGreaterThan(1);
  expect(signals.map(({ id }) => id)).toContain('single-parts-only');
});

/** Drill, turn, part off: six tools on the tailstock do what a program would, for the price of one axis. */
test('who makes plain brass by the dozen gets stops and a turret', () => {
  const { verdict, columns, alternatives: beside } = owner('brass-by-the-dozen');
  expect(verdict.answer).toBe('tailstock-turret');
  expect(columns[0]).toBe('tailstock-turret');
  const turret = beside.find(({ id }) => id === 'tailstock-turret')!;
  const paid = turret.payback.find(({ perHour, buildingCounts }) => perHour === 30 && buildingCounts)!;
  expect(paid.typical).toBeLessThan(3);
});

/** Curves and threads in batches earn the program; the only lathe makes it a job in stages. */
test('who turns handles on the only lathe converts, in stages', () => {
  const { verdict, columns } = owner('handles-on-the-only-lathe');
  expect(verdict).toMatchObject({ id: 'convert-in-stages', answer: 'conversion', weight: 'go' });
  expect(said(verdict)).toContain('in stages');
  expect(columns.slice(0, 2)).toContain('conversion');
});

/** Screws, guards and mounts are there: no other way gives as much lathe for the money, if it proves sound. */
test('who has a school machine re-controls it', () => {
  const { verdict, columns } = owner('school-machine-in-the-shed');
  expect(verdict).toMatchObject({ answer: 'training-machine', weight: 'go' });
  expect(columns[0]).toBe('training-machine');
});

/** Sixteen parts a year at $25: five years of buying cost less than the parts of a conversion, and no evenings. */
test('who needs sixteen odd parts a year sends them out', () => {
  const { verdict, columns, signals } = owner('sixteen-odd-parts-a-year');
  expect(verdict.answer).toBe('send-out');
  expect(columns[0]).toBe('send-out');
  expect(signals.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['few-jobs', 'slow-return', 'cheaper-outside']),
  );
});

/** Wear moves along with the carriage: whatever drives it, the parts come out as hollow as the bed. */
test('whose bed is hollow near the chuck does not touch it', () => {
  const { verdict, columns, signals } = owner('hollow-near-the-chuck');
  expect(verdict).toMatchObject({ id: 'do-not-convert', weight: 'do-not' });
  expect(columns.at(-1)).toBe('conversion');
  expect(signals[0]).toMatchObject({ id: 'worn-bed', level: 'stop' });
});

test('no verdict is a score, and every one with parts named carries numbers', () => {
  for (const { path } of inventedOwners) {
    const { verdict } = askedBy(path);
    expect(said(verdict)).not.toMatch(/\bP\d\d\b|score/i);
    expect(said(verdict)).toMatch(/\$[\d,]+/);
  }
});

test('an owner with a currency reads every amount in it, and no other figure moves', () => {
  const { verdict } = askedBy(inventedOwners[0]!.path);
  const inDollars = said(verdict);
  showIn({ code: 'EUR', perDollar: '0.5' });
  const inEuros = said(verdict);
  showIn(undefined);
  const amounts = (text: string) => text.match(/[$€][\d,]+/g)!.map((each) => Number(each.replace(/\D/g, '')));
  expect(inEuros).not.toContain('$');
  expect(amounts(inEuros).map((amount, at) => amount / amounts(inDollars)[at]!)).toSatisfy(
    (ratios: number[]) => ratios.every((ratio) => Math.abs(ratio - 0.5) < 0.05),
  );
  expect(inEuros.replace(/€[\d,]+/g, '…')).toBe(inDollars.replace(/\$[\d,]+/g, '…'));
});
