import { expect, test } from 'vitest';
import { figuresText, isPrinted, statementsOf, worksOf } from '../../src/components/source-list.ts';

test('a work stands once, however its commas and apostrophes are set', () => {
  const works = worksOf([
    { formula: 'b', ref: 'Handbook’s tables, 3rd edition', at: 'p. 2', use: 'law' },
    { formula: 'a', ref: 'Atlas', at: 'p. 1', use: 'seen' },
    { formula: 'c', ref: "Handbook's tables 3rd edition", at: 'p. 9', use: 'memory' },
    { formula: 'b', ref: 'Handbook’s tables, 3rd edition', at: 'p. 3', use: 'seen' },
  ]);
  expect(works).toEqual([
    { ref: 'Atlas', formulas: ['a'], seen: 1, memory: 0 },
    { ref: 'Handbook’s tables, 3rd edition', formulas: ['b', 'c'], seen: 1, memory: 1 },
  ]);
});

test('chapters and modules of one work stand under it', () => {
  const use = 'law' as const;
  const works = worksOf([
    { formula: 'a', ref: 'Physics', at: '', use },
    { formula: 'b', ref: 'Physics, module m58731', at: '', use },
    { formula: 'c', ref: 'Physics, chapter 3', at: '', use },
    { formula: 'd', ref: 'Physics, volume 2', at: '', use },
  ]);
  expect(works.map(({ ref, formulas }) => [ref, formulas.length])).toEqual([
    ['Physics', 3],
    ['Physics, volume 2', 1],
  ]);
});

test('what nobody prints stands apart', () => {
  expect(['plain geometry', 'common practice, no source', 'Standard texts'].some(isPrinted)).toBe(false);
  expect(isPrinted('IEC 60204-1')).toBe(true);
});

test('a statement that two pages make stands once, with both', () => {
  const statements = statementsOf([
    { id: 'one', sources: ['Common practice.', 'A table, page 2.'] },
    { id: 'two', sources: ['Common practice'] },
  ]);
  expect(statements).toEqual([
    { text: 'Common practice.', topics: ['one', 'two'] },
    { text: 'A table, page 2.', topics: ['one'] },
  ]);
});

test.each([
  [0, 0, ''],
  [1, 0, '1 figure read there'],
  [0, 2, '2 figures quoted from memory'],
  [3, 1, '3 figures read there, 1 quoted from memory'],
])('%i seen and %i from memory', (seen, memory, text) => {
  expect(figuresText({ ref: 'x', formulas: [], seen, memory })).toBe(text);
});
