import { expect, test } from 'vitest';
import { readCsv } from '../../src/export/csv-reader.ts';
import { splitOwn } from '../../src/export/own.ts';
import { planCsv, planTables } from '../../src/export/plan-tables.ts';
import { bigPath, bigReport } from './big-list.ts';

test.each(['tasks', 'risks', 'checks'] as const)(
  'the table of %s comes back from its file cell by cell',
  (name) => {
    const { heads, rows } = planTables[name](bigReport);
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.every((row) => row.length === heads.length)).toBe(true);
    const back = readCsv(planCsv(bigReport, name).slice(1), ',').rows.map(({ cells }) => cells);
    expect(back).toEqual([heads, ...rows]);
  },
);

test('every task, risk and check of the report has its row', () => {
  const count = (name: keyof typeof planTables) => planTables[name](bigReport).rows.length;
  expect(count('tasks')).toBe(bigReport.order.length);
  expect(count('risks')).toBe(bigReport.risks.length);
  expect(count('checks')).toBe(bigReport.checks.length);
});

test('a whole path is the path of its link and what only the owner knows', () => {
  const { path, own } = splitOwn(bigPath);
  expect(Object.keys(path).sort()).toEqual(['answers', 'edition', 'facts', 'owned', 'size']);
  expect({ ...path, ...own }).toEqual(bigPath);
});
