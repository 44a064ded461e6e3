// Worked by hand, no published source: reach, height and bar at the margins of their checks.
import { expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/tooling/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const post: Bench = { answers: { 'tool-holding': 'quick-change-post' } };
const gang = (margin: number): Bench => ({
  figures: { 'gang-travel-needed': 0.1, 'cross-travel-left': 0.1 * margin },
});
const bar = (margin: number, feed: string): Bench => ({
  answers: { 'bar-feed': feed },
  figures: { 'bar-overhang': 3 / margin },
  measured: { 'bar-overhang': 0.1 },
});

const ofPost = (row: Omit<Row, 'absent'>): Row => ({
  ...row,
  at: (margin) => over(post, row.at(margin)),
  absent: [row.at(2)],
});

judges(checks, [
  {
    id: 'gang-travel',
    sense: 'at-least',
    comfort: 1,
    at: gang,
    absent: [without(gang(2), 'gang-travel-needed')],
  },
  ofPost({
    id: 'cross-reach',
    sense: 'at-least',
    comfort: 1,
    at: (margin) => ({ figures: { 'cross-travel-left': 0.08 * margin, 'cross-reach-needed': 0.08 } }),
  }),
  ofPost({
    id: 'reach-past-centre',
    sense: 'at-least',
    comfort: 1,
    at: (margin) => ({ measured: { 'reach-past-centre': 0.0015 * margin } }),
  }),
  ofPost({
    id: 'tool-height',
    sense: 'at-most',
    comfort: 1.2,
    at: (margin) => ({
      figures: { 'tool-height-error': 4e-6 / margin },
      facts: { 'tolerance-on-diameter': 20e-6 },
    }),
  }),
  ...['bar-against-stop', 'bar-puller'].map(
    (feed): Row => ({
      id: 'bar-overhang',
      when: feed,
      sense: 'at-most',
      comfort: 1,
      at: (margin) => bar(margin, feed),
      absent: [bar(2, 'single-pieces')],
    }),
  ),
]);

test('reach and overhang are asked for until they were measured', () => {
  expect(find('reach-past-centre', post)).toMatchObject({ result: 'not-yet', needs: ['reach-past-centre'] });
  expect(find('bar-overhang', without(bar(1, 'bar-puller'), 'bar-overhang'))).toMatchObject({
    result: 'not-yet',
    needs: ['bar-overhang'],
  });
});
