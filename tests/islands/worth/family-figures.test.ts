import { describe, expect, test } from 'vitest';
import { type Family, usualFamily } from '../../../src/calc/core/family.ts';
import {
  type FamilyFigure,
  familyFigures,
  familyFigureText,
  readFamilyFigure,
} from '../../../src/islands/worth/family-figures.ts';

const figure = (id: string): FamilyFigure =>
  Object.values(familyFigures)
    .flat()
    .find((each) => each.id === id)!;
const family: Family = { name: 'Knobs', ...usualFamily };

describe('what is typed about a family', () => {
  test.each([
    ['20', 20 / 60],
    ['20 min', 20 / 60],
    ['1.5 h', 1.5],
    ['1,5 hours', 1.5],
    ['0', 0],
  ])('minutes: %s', (typed, hours) => {
    const read = readFamilyFigure(figure('hand-piece'), typed);
    expect(read.kind).toBe('value');
    expect(read).toHaveProperty('value', expect.closeTo(hours, 12));
  });

  test('money and pieces come with their sign or word', () => {
    expect(readFamilyFigure(figure('price'), '$ 4.50')).toEqual({ kind: 'value', value: 4.5 });
    expect(readFamilyFigure(figure('pieces'), '30 pieces')).toEqual({ kind: 'value', value: 30 });
  });

  test.each([
    ['pieces', '0'],
    ['pieces', 'many'],
    ['pieces', ''],
    ['batches', '-3'],
    ['hand-piece', '2000000'],
    ['hand-piece', '3 days'],
  ])('%s: “%s” is said to be wrong', (id, typed) => {
    expect(readFamilyFigure(figure(id), typed)).toMatchObject({ kind: 'unreadable' });
  });

  test('only the price may be left empty, and is then taken out', () => {
    expect(readFamilyFigure(figure('price'), ' ')).toEqual({ kind: 'empty' });
    const priced = figure('price').set(family, 4);
    expect(figure('price').clear?.(priced)).toEqual(family);
  });
});

describe('a figure in its field', () => {
  test('hours stand as minutes, and what stands there reads back as the same', () => {
    expect(familyFigureText(figure('hand-piece'), family)).toBe('20');
    expect(familyFigureText(figure('price'), family)).toBe('');
    for (const each of Object.values(familyFigures)
      .flat()
      .filter(({ get }) => get(family) !== undefined)) {
      const read = readFamilyFigure(each, familyFigureText(each, family));
      expect(read).toHaveProperty('value', expect.closeTo(each.get(family)!, 3));
    }
  });

  test('each figure sets its own place and no other', () => {
    for (const each of Object.values(familyFigures).flat()) {
      const changed = each.set(family, 7);
      expect(each.get(changed)).toBe(7);
      for (const other of Object.values(familyFigures)
        .flat()
        .filter(({ id }) => id !== each.id))
        expect(other.get(changed)).toBe(other.get(family));
    }
  });
});
