import { expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

test('on a transformer the small motor of two sizes has the supply of its own that the plan buys', () => {
  const path = pathOf({ 'motor-size': 'face-57-and-86', 'motor-supply': 'transformer-supply' });
  const { checks, bill } = evaluate(path, currentEdition);
  const check = checks.find(({ id }) => id === 'cross-supply-voltage');
  expect(check?.result).toBe('ok');
  expect(check?.value?.value).toBeLessThan(50);
  expect(bill.once.map(({ part }) => part)).toContain('enclosed-supply-part');
  expect(checks.find(({ id }) => id === 'carriage-supply-voltage')?.value?.value).toBe(60);
});

test('small motors on a transformer alone are over the voltage of their drives', () => {
  const path = pathOf({ 'motor-size': 'face-57-both', 'motor-supply': 'transformer-supply' });
  const { checks, choices } = evaluate(path, currentEdition);
  const taken = choices.find(({ decision }) => decision === 'motor-supply');
  const voltage = checks.find(({ id }) => id === 'cross-supply-voltage');
  expect(taken?.status === 'clash' || voltage?.result === 'stop').toBe(true);
});
