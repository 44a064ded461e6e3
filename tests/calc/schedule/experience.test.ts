// Practice shortens the work, not the trouble.
import { expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const reportOf = (experience: string | null) => evaluate(pathOf({ experience }), currentEdition);
const first = reportOf('first-conversion');

test('a first-timer is what the plan takes everybody for', () => {
  expect(reportOf(null).hours).toEqual(first.hours);
});

test.each([
  ['built-machines-before', 0.75],
  ['converted-before', 0.6],
])('%s: every task by the same share, trouble as for everybody', (experience, share) => {
  const report = reportOf(experience);
  for (const [at, stage] of report.stages.entries())
    expect(stage.hours[1]).toBeCloseTo(first.stages[at]!.hours[1] * share, 9);
  const work = ({ hours }: typeof report) => hours.mean - hours.meanTrouble;
  expect(work(report) / work(first)).toBeCloseTo(share, 9);
  expect(report.hours.meanTrouble).toBeCloseTo(first.hours.meanTrouble, 9);
  expect(report.findings.some((finding) => finding.id === 'practice-shortens-hours')).toBe(true);
  expect(report.money.p50).toBe(first.money.p50);
});
