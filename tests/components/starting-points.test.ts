import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { figureWords } from '../../src/components/starting/figures.ts';
import { firstAlternatives, startingPoint, weighed } from '../../src/components/starting/points.ts';
import { answersByRoom, latheRows } from '../../src/components/starting/words.ts';
import { editionByName } from '../../src/content/edition.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { wishes } from '../../src/content/starting-points.ts';
import { middleHalf, moneyRange } from '../../src/islands/shared/format.ts';
import { decodePath } from '../../src/link/decode.ts';
import { keptLinks } from '../links/corpus.ts';

const kept = new Set(keptLinks().map(({ fragment }) => fragment));
const owners = inventedOwners.map((owner) => [owner.id, owner] as const);

test('every invented owner stands under one wish', () => {
  const listed = wishes.flatMap((wish) => wish.owners);
  expect(listed.toSorted()).toEqual(inventedOwners.map(({ id }) => id).toSorted());
});

describe.each(owners)('%s', (_, owner) => {
  const point = startingPoint(owner);

  test('has a link that stands in the corpus and carries the whole path but the parts that are made', () => {
    expect([...kept]).toContain(point.fragment);
    const { path } = decodePath(point.fragment);
    expect(path.answers).toEqual(owner.path.answers);
    expect(path.owned).toEqual(owner.path.owned.toSorted());
    expect(path.size).toBe(owner.path.size);
    for (const [id, value] of Object.entries(owner.path.facts)) expect(path.facts[id]).toBeCloseTo(value, 9);
  });

  test('shows the figures that the link comes to at the prices of its own edition', () => {
    const { path } = decodePath(point.fragment);
    const { money } = evaluate(path, editionByName(path.edition)!);
    const { from, to } = middleHalf(money.twenty);
    expect(figureWords(point.report).money).toBe(moneyRange(from, to));
    expect(point.report.edition.id).toBe(path.edition);
  });

  test('names every answer with a reason, the facts of the lathe and something else to weigh', () => {
    const rows = answersByRoom(point.report).flatMap((room) => room.rows);
    expect(rows.filter(({ said, why }) => said === '' || why === '')).toEqual([]);
    const shown = new Set([...rows, ...latheRows(point.report)].map(({ decision }) => decision));
    const answered = point.report.choices.filter(({ status }) => status === 'answered');
    expect(answered.map(({ decision }) => decision).filter((id) => !shown.has(id))).toEqual([]);
    const { side, stops } = weighed(point);
    expect(firstAlternatives(side).map(({ id }) => id)).toHaveLength(3);
    expect(stops.length).toBeGreaterThan(2);
  });
});
