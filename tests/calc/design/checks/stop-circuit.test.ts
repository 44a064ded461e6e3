// Stop circuit, watchdog, stop table and homing: counted and worked by hand, no published source.
import { describe, expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/wiring/checks.ts';
import { stopTable } from '../../../../src/calc/subsystems/wiring/stop-table.ts';
import { type Bench, finder, lookOf, over } from './bench.ts';

const find = finder(checks);
const answers = (given: Record<string, string>): Bench => ({ answers: given });

describe('stop circuit', () => {
  test.each([
    ['tells-computer-only', 'jaw-chuck', 0, 1, 'stop'],
    ['cuts-power', 'jaw-chuck', 1, 1, 'ok'],
    ['cuts-power-watched', 'jaw-chuck', 2, 1, 'ok'],
    ['tells-computer-only', 'power-chuck', 0, 2, 'stop'],
    ['cuts-power', 'power-chuck', 1, 2, 'stop'],
    ['cuts-power-watched', 'power-chuck', 2, 2, 'ok'],
  ])('%s with %s: %d channels of %d, %s', (circuit, holding, channels, wanted, result) => {
    const check = find('stop-grade', answers({ 'stop-circuit': circuit, 'work-holding': holding }))!;
    expect(check).toMatchObject({ result, value: { value: channels }, limit: { value: wanted } });
    expect(check.decisions).toEqual(['stop-circuit', 'work-holding']);
    expect(check.limit?.origin).toMatchObject({
      why: expect.stringMatching(wanted === 2 ? /two/ : /software/),
    });
  });

  test('a stop that depends on software is never good', () => {
    const told = answers({ 'stop-circuit': 'tells-computer-only', watchdog: 'heartbeat-relay' });
    expect(find('stop-grade', told)?.result).toBe('stop');
  });

  test('does not arise before the question', () => {
    expect(find('stop-grade', {})).toBeUndefined();
    expect(find('watchdog', {})).toBeUndefined();
  });
});

test.each([
  ['no-watchdog', 'stop'],
  ['heartbeat-relay', 'ok'],
  ['drive-enable-chain', 'ok'],
])('watchdog %s: %s', (watchdog, result) => {
  expect(find('watchdog', answers({ watchdog }))).toMatchObject({
    result,
    decisions: ['watchdog', 'control'],
  });
});

describe('stop table', () => {
  const bare = answers({ 'axis-motor': 'open-loop-stepper' });
  const proved = (rows: number) => over(bare, { measured: { 'stop-rows-proved': rows } });

  test('every line of this machine has to be proved', () => {
    const rows = stopTable(lookOf(bare)).length;
    expect(find('stop-table', proved(rows))).toMatchObject({
      result: 'ok',
      needs: [],
      limit: { value: rows },
    });
    expect(find('stop-table', proved(rows - 1))?.result).toBe('stop');
    expect(find('stop-table', bare)).toMatchObject({ result: 'not-yet', needs: ['stop-rows-proved'] });
    expect(find('stop-table', bare)?.decisions.length).toBeGreaterThan(2);
  });

  test('the limit names the lines, so that an explanation can list them', () => {
    const { origin } = find('stop-table', bare)!.limit!;
    const events = stopTable(lookOf(bare)).map(({ event }) => event);
    expect(origin).toMatchObject({ why: events.join('; ') });
  });
});

const slides = [
  ['carriage', 0.05e-3, 1, 'cross-slide-only'],
  ['cross', 0.01e-3, 1.5, 'carriage-only'],
] as const;

describe.each(slides)('homing of the %s', (slide, allowed, comfort, onlyOther) => {
  const id = `${slide}-homing`;
  const switched = answers({ 'home-limits': 'home-switches' });
  const spread = (margin: number, bench = switched) =>
    find(id, over(bench, { measured: { [`${slide}-home-spread`]: allowed / margin } }));

  test('a measured spread is held against what is allowed', () => {
    expect(spread(0.999)?.result).toBe('stop');
    expect(spread(1.001)?.result).toBe(comfort > 1 ? 'look' : 'ok');
    expect(spread(comfort * 1.001)?.result).toBe('ok');
    if (comfort > 1) expect(spread(comfort * 0.999)?.result).toBe('look');
    expect(spread(2)).toMatchObject({ sense: 'at-most', decisions: ['home-limits'] });
  });

  test.each([
    [
      'home-switches',
      { carriage: 0.05e-3, cross: 0.01e-3 },
      { carriage: /sensor/, cross: /precision switch/ },
    ],
    [
      'home-and-limit-switches',
      { carriage: 0.05e-3, cross: 0.01e-3 },
      { carriage: /sensor/, cross: /precision switch/ },
    ],
    ['home-and-motor-mark', { carriage: 0.005e-3, cross: 0.005e-3 }, { carriage: /mark/, cross: /mark/ }],
    ['no-homing', { carriage: 0.03e-3, cross: 0.03e-3 }, { carriage: /by hand/, cross: /by hand/ }],
  ])('%s: what the buy list fits, until it is measured', (option, expected, whys) => {
    const check = find(id, answers({ 'home-limits': option }))!;
    expect(check.value?.value).toBe(expected[slide]);
    const why = whys[slide];
    expect(check.value?.origin).toMatchObject({ option, why: expect.stringMatching(why) });
  });

  test('without switches there is more to do by hand, and nothing to fail', () => {
    const none = answers({ 'home-limits': 'no-homing' });
    expect(find(id, none)?.result).toBe(slide === 'cross' ? 'look' : 'ok');
    expect(spread(0.2, none)?.result).toBe('look');
    expect(spread(4, none)?.result).toBe('ok');
    expect(spread(0.2, none)?.remedy).toMatch(/touched off again/);
    expect(spread(0.2)?.remedy).not.toMatch(/touched off again/);
  });

  test('does not arise on a slide without a motor, with a thread synchroniser, or before the question', () => {
    expect(find(id, {})).toBeUndefined();
    expect(find(id, over(switched, answers({ 'driven-axes': onlyOther })))).toBeUndefined();
    expect(find(id, over(switched, answers({ control: 'thread-synchroniser' })))).toBeUndefined();
    expect(spread(2, over(switched, answers({ 'driven-axes': 'both-slides' })))).toBeDefined();
  });
});
