import { expect, test } from 'vitest';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { nameOfPath, describe as said, small } from '../../../src/islands/compare/names.ts';

const first = referencePaths[0]!.path;
const otherwise = (id: string, option: string[]) => ({
  ...first,
  answers: { ...first.answers, [id]: option },
});

test('a path that differs in an answer or two is called after them', () => {
  expect(nameOfPath(otherwise('control', ['small-board']), first)).toMatch(/^As A, but: [a-z]/);
  expect(nameOfPath(otherwise('control', []), first)).toBe('As A, but: control left open');
  expect(nameOfPath(first, first)).toBe('The same as A');
  expect(nameOfPath({ ...first, size: 'large' }, first)).not.toContain('As A');
});

test('what its answers say about a path, and about one without any', () => {
  expect(said(first).split('; ').length).toBeGreaterThan(1);
  expect(said({ ...first, size: 'small', answers: {} })).toBe('A small lathe, nothing answered yet');
});

test('words that are capitals stay capitals inside a sentence', () => {
  expect(small('PC with a card')).toBe('PC with a card');
  expect(small('Ready-made control')).toBe('ready-made control');
});
