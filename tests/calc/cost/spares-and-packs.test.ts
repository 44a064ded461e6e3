import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { currentEdition, editionByName, editions } from '../../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../../src/content/reference-paths.ts';
import { anyPath } from '../../arbitrary.ts';
import { quickly } from '../../cases.ts';

const first = editionByName('2026-11')!;
const lines = (path = pathOf({}), book = currentEdition) => evaluate(path, book).bill.once;
const lineOf = (part: string, path = pathOf({}), book = currentEdition) =>
  lines(path, book).find((line) => line.part === part);

describe('packs and spares', () => {
  test('cable comes in packs: twelve metres are three packs of five, three metres left, and fifteen are paid', () => {
    const cable = lineOf('power-cable')!;
    expect([cable.qty, cable.pack, cable.packs, cable.leftOver]).toEqual([12, 5, 3, 3]);
    expect(cable.line[1]).toBeCloseTo(15 * cable.each[1], 9);
  });

  test('the first edition prices the bare need and lists nothing that came after it', () => {
    const cable = lineOf('power-cable', pathOf({}), first)!;
    expect(cable.line[1]).toBeCloseTo(12 * cable.each[1], 9);
    expect(lineOf('tapping-drills', pathOf({}), first)).toBeUndefined();
    expect(lines(pathOf({}), first).every(({ keep }) => keep.count === 0)).toBe(true);
  });

  test('a drive is kept as a spare, with its reason, and its trouble then costs hours and no money', () => {
    const plain = pathOf({ 'axis-motor': 'open-loop-stepper' });
    const drive = lineOf('drive-50v', plain)!;
    expect([drive.qty, drive.keep.count, drive.toHave]).toEqual([2, 1, 3]);
    expect(drive.keep.why.join()).toContain('most often killed');
    const risk = (book = currentEdition) =>
      evaluate(plain, book).risks.find(({ id }) => id === 'supply-kills-drive')!;
    expect([risk().expectedMoney, risk().spares]).toEqual([0, ['drive-50v']]);
    expect(risk().expectedHours).toBeGreaterThan(0);
    expect(risk(first).expectedMoney).toBeGreaterThan(0);
  });

  test('owning the drives leaves no spare to count on', () => {
    const plain = pathOf({ 'axis-motor': 'open-loop-stepper' }, 'medium', { owned: ['drive-50v'] });
    const risk = evaluate(plain, currentEdition).risks.find(({ id }) => id === 'supply-kills-drive')!;
    expect(risk.spares).toBeUndefined();
  });

  test('drills follow the holes and the casting: harder iron, a hand drill and the owner’s own chance ask for more', () => {
    const drills = (path: Parameters<typeof lines>[0]) => lineOf('tapping-drills', path)!.qty;
    const usual = drills(pathOf({}));
    expect(drills(pathOf({}, 'small'))).toBeGreaterThanOrEqual(usual);
    expect(drills(pathOf({ 'mill-access': 'no-machine-tools' }))).toBeGreaterThan(usual);
    expect(drills(pathOf({}, 'medium', { facts: { 'break-chance': 0 } }))).toBe(1);
    // 48 holes at one in ten: the sum of the negative binomial, made apart from ours, reaches 95 % with eleven drills.
    expect(drills(pathOf({}, 'medium', { facts: { 'break-chance': 0.1 } }))).toBe(11);
  });

  test('no line has less than its need, whatever the path, in every edition', () => {
    fc.assert(
      fc.property(anyPath, fc.constantFrom(...editions), (path, book) => {
        for (const line of evaluate({ ...path, edition: book.edition }, book).bill.once) {
          expect(line.toHave, line.part).toBeGreaterThanOrEqual(line.qty);
          if (!line.owned) expect(line.packs * line.pack, line.part).toBeGreaterThanOrEqual(line.toHave);
          expect(line.leftOver, line.part).toBeLessThan(line.pack);
        }
      }),
      { numRuns: quickly(150), seed: 8 },
    );
  }, 300_000);
});

describe('what to order, from the design', () => {
  test('a screw by diameter, lead, length and thread, cut from the next stock length', () => {
    expect(lineOf('ball-screw-carriage')!.size).toMatch(
      /^order 16 × 5 mm, \d+ mm over all with \d+ mm of thread; cut from \d+(00|50) mm$/,
    );
  });

  test('a longer travel asks for a longer screw', () => {
    const over = (travel: number): number =>
      Number(
        /(\d+) mm over all/.exec(
          lineOf(
            'ball-screw-carriage',
            pathOf({ 'way-covers': 'wipers-only' }, 'medium', { facts: { 'carriage-travel': travel } }),
          )!.size!,
        )![1],
      );
    expect(over(0.6) - over(0.4)).toBe(200);
  });

  test('screws and dowels by brackets: eight on the reference path, one on a lead screw', () => {
    expect(lineOf('fasteners')!.size).toBe(
      '36 cap screws and 18 dowels for 8 brackets, a tenth more counted in',
    );
  });

  test('ferrules, numbers and glands by wires and cables', () => {
    expect(lineOf('terminals-and-ferrules')!.size).toMatch(/^about \d+ ferrules/);
    expect(lineOf('labels-and-sleeves')!.size).toMatch(/^about \d+ wire numbers/);
    expect(lineOf('glands-and-trunking')!.size).toMatch(/^\d+ glands: \d+ cables/);
  });
});

describe('laws of money', () => {
  test('owning more never costs more, with purchases too', () => {
    for (const { path } of referencePaths) {
      const all = lines(path).map(({ part }) => part);
      const purchases = { [all[3]!]: { state: 'ordered', price: '40' } as const };
      let before = evaluate({ ...path, purchases }, currentEdition).money.p50;
      for (let at = 0; at < all.length; at += 7) {
        const owned = all.slice(0, at + 1);
        const now = evaluate({ ...path, purchases, owned }, currentEdition).money.p50;
        expect(now).toBeLessThanOrEqual(before + 1e-9);
        before = now;
      }
    }
  }, 300_000);

  test('the owner’s own chance of a risk moves the mean its way', () => {
    const at = (chance: number) =>
      evaluate({ ...pathOf({}), chances: { 'missed-steps': chance } }, currentEdition);
    const row = at(0.9).risks.find(({ id }) => id === 'missed-steps')!;
    expect([row.chance, row.theirs]).toEqual([0.9, 0.9]);
    expect(row.ours).not.toBe(0.9);
    expect(at(0.9).money.mean).toBeGreaterThan(at(0).money.mean);
    const odd = evaluate({ ...pathOf({}), chances: { 'missed-steps': Number.NaN } }, currentEdition);
    expect(odd.money.p50).toBe(evaluate(pathOf({}), currentEdition).money.p50);
  });

  test('a flat allowance takes the place of the money of the risks; hours stay', () => {
    const plain = evaluate(pathOf({}), currentEdition);
    const flat = evaluate({ ...pathOf({}), allowance: 0.1 }, currentEdition);
    expect(flat.money.troubleBy).toBe('allowance');
    expect(flat.money.parts.cents.trouble).toBeCloseTo(flat.money.parts.cents.goods / 10, -1);
    expect(flat.hours.p50).toBe(plain.hours.p50);
    expect(evaluate({ ...pathOf({}), allowance: 0 }, currentEdition).money.trouble.p90).toBe(0);
  });
});
