// What is measured, against which limit, and where a bad value points.
import { expect, test } from 'vitest';
import { compile } from '../../../src/calc/choices/state.ts';
import { judge, judgeAll, mm } from '../../../src/calc/core/reading.ts';
import { readingById, readings } from '../../../src/calc/schedule/readings.ts';
import { risks, tasks } from '../../../src/calc/trade.ts';

const taskById = new Map(tasks.map((task) => [task.id, task]));
const riskIds = new Set(risks.map((risk) => risk.id));

test('ids are unique and permanent in form, tasks and risks exist, every condition compiles', () => {
  const ids = readings.map((reading) => reading.id);
  expect(new Set(ids).size).toBe(ids.length);
  const wrong = readings.flatMap(({ id, task, points, when }) => {
    if (when) compile(when);
    return [
      ...(/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id) ? [] : [id]),
      ...[task, ...points.tasks].filter((each) => !taskById.has(each)).map((each) => `${id}: task ${each}`),
      ...points.risks.filter((each) => !riskIds.has(each)).map((each) => `${id}: risk ${each}`),
      ...(points.say.endsWith('.') ? [] : [`${id} says no sentence`]),
    ];
  });
  expect(wrong).toEqual([]);
});

test('a good value lies inside its limit, and a lower limit under the upper one', () => {
  const wrong = readings.filter(
    ({ atMost, atLeast, good }) =>
      (good !== undefined && atMost !== undefined && good >= atMost) ||
      (atLeast !== undefined && atMost !== undefined && atLeast >= atMost),
  );
  expect(wrong.map((reading) => reading.id)).toEqual([]);
});

test('a limit on a sheet is the figure that the test of its task says', () => {
  const figureOf = ({ atMost, atLeast, unit, show }: (typeof readings)[number]): string | undefined => {
    const limit = atMost || atLeast;
    if (!limit) return undefined;
    if (show === 'length') return String(Number((limit * 1000).toPrecision(6)));
    return unit === '1' && show === 'share' && limit < 0.5
      ? String(Number((limit * 100).toPrecision(6)))
      : undefined;
  };
  const wrong = readings.flatMap((reading) => {
    const figure = figureOf(reading);
    const said = taskById.get(reading.task)!.test;
    return figure === undefined || said.includes(figure) ? [] : [`${reading.id}: ${figure} not in “${said}”`];
  });
  expect(wrong).toEqual([]);
});

test('play is judged with its limit, without regard to the sign', () => {
  const play = readingById.get('carriage-end-play')!;
  expect([0.004, -0.004, 0.008, 0.0101].map((value) => judge(play, mm(value)))).toEqual([
    'good',
    'good',
    'within',
    'outside',
  ]);
});

test('what must not fall short is judged by its sign; what has no limit is noted', () => {
  const casting = readingById.get('saddle-casting-left')!;
  expect([judge(casting, mm(5)), judge(casting, mm(4.9)), judge(casting, mm(-6))]).toEqual([
    'within',
    'outside',
    'outside',
  ]);
  expect(judge(readingById.get('facing-hollow')!, mm(-0.01))).toBe('outside');
  expect(judge(readingById.get('pull-carriage')!, 80)).toBe('noted');
});

test('of several values the worst decides; none is no judgement', () => {
  const play = readingById.get('play-cross')!;
  expect(judgeAll(play, [mm(0.008), mm(0.04), mm(0.02)])).toBe('outside');
  expect(judgeAll(play, [mm(0.008), mm(0.009)])).toBe('good');
  expect(judgeAll(play, [])).toBeUndefined();
});

test('both lists of the trade are there: the survey before, the proof after', () => {
  const inList = (list: 'survey' | 'proof') => readings.filter((reading) => reading.list === list);
  expect(inList('survey').length).toBeGreaterThanOrEqual(9);
  expect(new Set(inList('proof').map((reading) => reading.task))).toEqual(
    new Set([
      'axis-calibration',
      'homing-and-soft-limits',
      'rapid-search',
      'noise-soak',
      'turning-test',
      'air-cut',
      'threading-test',
      'drilling-test',
      'first-real-part',
      'snag-list',
    ]),
  );
});
