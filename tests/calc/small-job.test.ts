// A thread synchroniser on the lathe's own lead screw is a small job: it must not be charged for a machine that runs programs.
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../src/content/reference-paths.ts';

const threadsOnly = pathOf(
  {
    purpose: ['one-off-repairs', 'thread-cutting'],
    'thread-kinds': ['metric-threads', 'inch-threads'],
    'hand-use': 'fully-reversible',
    'driven-axes': 'carriage-only',
    'carriage-drive': 'original-lead-screw',
    'carriage-coupling': 'carriage-belt-1-1',
    apron: 'keep-apron',
    'old-feeds': 'disable-old-feeds',
    compound: 'keep-compound',
    'tool-holding': 'four-way-block',
    control: 'thread-synchroniser',
    'spindle-motor': 'keep-speed-knob',
    'speed-command': 'speed-by-knob',
    'spindle-stop': 'coast-to-stop',
    'home-limits': 'no-homing',
    housing: 'plastic-box',
  },
  'small',
);
const report = evaluate(threadsOnly, currentEdition);
const reference = evaluate(referencePaths[0]!.path, currentEdition);
const lines = report.bill.once.map((line) => line.part);
const tasks = report.stages.flatMap((stage) => stage.tasks.map((task) => task.id));
const asked = report.choices.filter((c) => c.status !== 'not-asked').map((c) => c.decision);

describe('threads only, on the lead screw it has', () => {
  test('keeps every part that protects people', () => {
    const safe = [
      'fuses-and-breakers',
      'main-disconnect',
      'mains-cord',
      'earth-bar',
      'stop-button',
      'contactor',
      'logic-supply',
      'eye-protection',
    ];
    expect(safe.filter((part) => !lines.includes(part))).toEqual([]);
    expect(
      ['prove-stop-circuit', 'bond-and-measure-earths', 'interim-stop'].filter((t) => !tasks.includes(t)),
    ).toEqual([]);
  });

  test('buys nothing for programs, a second motor or a cabinet', () => {
    const wrong = [
      'guard-with-switch',
      'used-pc',
      'cable-chain',
      'rail-and-terminals',
      'bellows-part',
      'off-delay-timer',
      'heartbeat-relay-part',
      'residual-device',
      'chuck-retention',
    ];
    expect(wrong.filter((part) => lines.includes(part))).toEqual([]);
    expect(report.bill.once.find((line) => line.part === 'closed-set-57')?.qty).toBe(1);
  });

  test('asks nothing about panels, programs, guards of a program start or covers of screws', () => {
    const idle = ['operator-panel', 'program-making', 'chuck-guard', 'watchdog', 'way-covers', 'reversing'];
    expect(idle.filter((id) => asked.includes(id))).toEqual([]);
  });

  test('electrics, control and spindle take about a quarter of the hours of the reference path', () => {
    const hours = (of: typeof report): number =>
      of.stages
        .flatMap((stage) => stage.tasks)
        .filter((task) => ['wiring', 'control', 'motors', 'spindle'].includes(task.subsystem))
        .reduce((sum, task) => sum + task.hours[1], 0);
    expect(hours(report)).toBeGreaterThan(18);
    expect(hours(report)).toBeLessThan(30);
    expect(hours(report) / hours(reference)).toBeLessThan(0.33);
  });

  test('the verdict fits once the path follows it', () => {
    expect(report.verdicts).toMatchObject([{ id: 'thread-synchroniser', weight: 'go' }]);
    const full = evaluate(pathOf({ purpose: 'thread-cutting' }), currentEdition);
    expect(full.verdicts).toMatchObject([{ id: 'thread-synchroniser', weight: 'think' }]);
  });
});
