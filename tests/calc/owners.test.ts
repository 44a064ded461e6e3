// Two owners worked by hand by an old hand of the trade; no published source. The ranges are wide on purpose.
import { describe, expect, test } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { designOf } from '../../src/calc/design.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';
import { usuallyOwned } from '../../src/content/usually-owned.ts';

const between = (value: number, low: number, high: number): void => {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
};

const reportOf = (path: Path) => evaluate(path, currentEdition);

describe('an occasional user with a small lathe who wants metric and inch threads', () => {
  const path = pathOf(
    {
      purpose: ['thread-cutting', 'one-off-repairs'],
      'thread-kinds': ['metric-threads', 'inch-threads'],
      'hand-use': 'fully-reversible',
      'driven-axes': 'carriage-only',
      'carriage-drive': 'original-lead-screw',
      'carriage-coupling': 'carriage-direct',
      apron: 'keep-apron',
      'old-feeds': 'disable-old-feeds',
      control: 'thread-synchroniser',
      'spindle-motor': 'keep-speed-knob',
      'speed-command': 'speed-by-knob',
      'spindle-stop': 'coast-to-stop',
      'home-limits': 'no-homing',
      housing: 'plastic-box',
    },
    'small',
  );
  const report = reportOf(path);

  test('the verdict is a thread synchroniser, for $900–1,700 and 20–100 hours', () => {
    expect(report.verdicts.map(({ id }) => id)).toContain('thread-synchroniser');
    between(report.money.p50, 900, 1700);
    between(report.hours.p50, 20, 100);
    between(reportOf({ ...path, owned: usuallyOwned }).money.p50, 900, 1700);
  });

  test('no second motor, no cross slide taken apart, no ball screw, no tool table', () => {
    const motors = report.bill.once.filter(({ part }) => part.startsWith('closed-set'));
    expect(motors.map(({ qty }) => qty)).toEqual([1]);
    const ball = report.bill.once.filter(({ part }) => part.startsWith('ball-screw'));
    expect(ball).toEqual([]);
    for (const task of [
      'strip-cross-slide',
      'fit-cross-screw',
      'fit-carriage-screw',
      'strip-apron',
      'tool-table-and-backup',
    ])
      expect(report.order).not.toContain(task);
  });

  test('fuses, disconnect, cord, earth and a proved stop circuit are there', () => {
    const bought = report.bill.once.map(({ part }) => part);
    expect(bought).toEqual(
      expect.arrayContaining([
        'fuses-and-breakers',
        'main-disconnect',
        'mains-cord',
        'earth-bar',
        'stop-button',
      ]),
    );
    expect(report.order).toContain('prove-stop-circuit');
  });

  test('a full conversion of the same lathe costs at least twice as much', () => {
    expect(reportOf(pathOf({}, 'small')).money.p50).toBeGreaterThan(2 * report.money.p50);
  });
});

describe('thirty brass pieces a month on a medium lathe, with a second one beside it', () => {
  const path = pathOf(
    {
      purpose: 'repeat-batches',
      'which-lathe': 'spare-lathe',
      'mains-supply': 'volts-230',
      'ground-fault-device': 'trips-at-30-ma',
      'mill-access': 'own-mill',
      'spindle-nose': 'bolted-nose',
      brackets: 'made-with-a-mill',
      'cross-nut': 'cross-double-nut',
      compound: 'slotted-slide-plate',
      'tool-holding': 'gang-tools',
      'work-holding': 'spring-collets',
      'bar-feed': 'bar-against-stop',
      holes: 'drill-in-tool-post',
      'home-limits': 'home-and-motor-mark',
      'stop-circuit': 'cuts-power-watched',
      lubrication: 'one-shot-oiler',
    },
    'medium',
    { facts: { 'tunnel-height': 0.034 }, owned: usuallyOwned },
  );
  const report = reportOf(path);

  // The range was worked out before prices of plate, guard, stop relay and circuit were raised: a circuit of its own
  // at $650 and these add about $900 of goods, so it holds for a 230 V outlet that is there already.
  test('a conditional yes, for $5,200–7,500 and 230–380 hours with the usual things owned', () => {
    expect(report.verdicts.map(({ id }) => id)).toContain('convert-conditional');
    between(report.money.p50, 5200, 7500);
    between(report.hours.p50, 230, 380);
  });

  test('bar tube, preloaded cross nut and a guard with its switch are bought', () => {
    const bought = report.bill.once.map(({ part }) => part);
    expect(bought).toEqual(expect.arrayContaining(['bar-tube', 'double-nut-cross', 'guard-with-switch']));
  });

  test('the third tool in line is the last that fits', () => {
    const machine = machineOf(path.size, path.facts);
    expect(designOf(planState(path, machine).state).figure('gang-tools')?.value).toBe(3);
    expect(report.checks.find(({ id }) => id === 'gang-travel')?.result).toBe('ok');
  });
});
