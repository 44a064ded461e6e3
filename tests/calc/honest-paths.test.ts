// Paths on which the plan once held too little, or far too much.
import { describe, expect, test } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';

const report = (path: Path) => evaluate(path, currentEdition);
const tasksOf = (path: Path) =>
  new Map(report(path).stages.flatMap((stage) => stage.tasks.map((task) => [task.id, task] as const)));
const partsOf = (path: Path) => new Set(report(path).bill.once.map((line) => line.part));
const statusOf = (path: Path, decision: string) =>
  report(path).choices.find((choice) => choice.decision === decision)?.status;
const chanceOf = (path: Path, risk: string) => report(path).risks.find((row) => row.id === risk)?.chance ?? 0;
const findingsOf = (path: Path) => report(path).findings.map((finding) => `${finding.level} ${finding.id}`);

const noCross = {
  'driven-axes': 'carriage-only',
  'cross-screw': null,
  'cross-nut': null,
  'cross-motor-place': null,
  'cross-screw-hold': null,
} as const;

/** One motor on the lead screw of a small lathe, led by a synchroniser box; nothing cut. */
const threads = pathOf(
  {
    ...noCross,
    purpose: ['one-off-repairs', 'thread-cutting'],
    'thread-kinds': ['metric-threads', 'inch-threads'],
    'hand-use': 'fully-reversible',
    'carriage-drive': 'original-lead-screw',
    'carriage-nut': null,
    'carriage-screw-ends': null,
    'carriage-screw-machining': null,
    'carriage-coupling': 'carriage-belt-1-1',
    apron: 'keep-apron',
    'old-feeds': 'disable-old-feeds',
    'power-off-hold': null,
    control: 'thread-synchroniser',
    'operator-panel': null,
    'program-making': null,
    'spindle-motor': 'keep-speed-knob',
    'speed-command': 'speed-by-knob',
    reversing: 'forward-only',
    'spindle-stop': 'coast-to-stop',
    'home-limits': 'no-homing',
    housing: 'plastic-box',
  },
  'small',
);

describe('a thread synchroniser on the lead screw', () => {
  test('plans one plate and a sensor: no layout, no saddle, no cross slide, no tool table', () => {
    const tasks = tasksOf(threads);
    for (const id of [
      'layout-sketch',
      'screw-drawings',
      'drill-bed-and-apron',
      'align-carriage-screw',
      'strip-cross-slide',
      'relieve-saddle',
      'fit-cross-motor',
      'make-riser',
      'swap-compound',
      'tool-table-and-backup',
      'drilling-test',
      'two-collar-baseline',
    ]) {
      expect(tasks.has(id), id).toBe(false);
    }
    for (const id of ['lead-screw-float', 'threading-test', 'settings-sheet', 'monthly-stop-test']) {
      expect(tasks.has(id), id).toBe(true);
    }
  });

  test('the five rooms of the mechanics plan at most thirty hours and a few hundred dollars', () => {
    const rooms = new Set(['purpose', 'approach', 'carriage', 'cross-slide', 'tooling']);
    const hours = [...tasksOf(threads).values()].filter((task) => rooms.has(task.subsystem));
    expect(hours.reduce((sum, task) => sum + task.hours[1], 0)).toBeLessThan(30);
    const lines = report(threads).bill.once.filter((line) => rooms.has(line.subsystem));
    expect(lines.reduce((sum, line) => sum + line.line[1], 0)).toBeLessThan(230);
  });

  test('tools, holes and compound are not asked, and a kit of ball-screw brackets is ruled out', () => {
    for (const id of ['tool-holding', 'tool-offsets', 'holes', 'work-holding', 'bar-feed', 'compound']) {
      expect(statusOf(threads, id), id).toBe('not-asked');
    }
    const { buying: _, ...open } = threads.answers;
    const buying = report({ ...threads, answers: open }).choices.find((each) => each.decision === 'buying');
    expect(buying?.blocked.map((block) => block.option)).toContain('ready-kit');
  });
});

describe('what a choice brings with it', () => {
  test('a block in place of the compound takes hours although the cross slide stays as it is', () => {
    const riser = tasksOf(pathOf(noCross));
    expect(riser.get('swap-compound')?.hours[1]).toBeGreaterThan(0);
    expect(tasksOf(pathOf({ ...noCross, compound: 'keep-compound' })).has('swap-compound')).toBe(false);
    const slide = tasksOf(pathOf({ ...noCross, compound: 'slotted-slide-plate' }));
    expect(slide.get('swap-compound')!.hours[1]).toBeGreaterThan(riser.get('swap-compound')!.hours[1]);
  });

  test('holding with the power off is asked wherever a ball screw turns, and a brake takes hours there', () => {
    const onlyCross = {
      'carriage-drive': 'original-lead-screw',
      'carriage-nut': null,
      'carriage-screw-ends': null,
      'carriage-screw-machining': null,
      apron: 'keep-apron',
      'old-feeds': 'disable-old-feeds',
    } as const;
    const braked = pathOf({ ...onlyCross, 'power-off-hold': 'holding-brake' });
    expect(statusOf(braked, 'power-off-hold')).toBe('answered');
    expect(report(braked).bill.once.find((line) => line.part === 'axis-brake')?.qty).toBe(1);
    const [plain, withBrake] = [tasksOf(pathOf(onlyCross)), tasksOf(braked)];
    expect(withBrake.get('fit-cross-motor')!.hours[1]).toBeGreaterThan(
      plain.get('fit-cross-motor')!.hours[1],
    );
    const neither = { ...onlyCross, 'cross-screw': 'original-cross-screw', 'cross-nut': null } as const;
    expect(statusOf(pathOf(neither), 'power-off-hold')).toBe('not-asked');
  });

  test('a kit brings the rear bracket too', () => {
    const rear = { 'cross-motor-place': 'rear-belt' };
    expect(partsOf(pathOf(rear)).has('rear-bracket-stock')).toBe(true);
    expect(partsOf(pathOf({ ...rear, buying: 'ready-kit' })).has('rear-bracket-stock')).toBe(false);
  });

  test('the axes of a training machine are measured before the path is frozen', () => {
    const { order } = report(pathOf({ 'which-lathe': 'dead-training-machine' }));
    expect(order).toContain('measure-existing-axes');
    expect(order.indexOf('measure-existing-axes')).toBeLessThan(order.indexOf('freeze-the-path'));
  });
});

describe('the tunnel under the cross slide', () => {
  const measured = { facts: { 'tunnel-height': 0.034 } };

  test('not measured is riskier than measured, and riskier still on a small lathe', () => {
    const unknown = chanceOf(pathOf({}), 'tunnel-too-tight');
    expect(unknown).toBeGreaterThan(chanceOf(pathOf({}, 'medium', measured), 'tunnel-too-tight'));
    expect(chanceOf(pathOf({}, 'small'), 'tunnel-too-tight')).toBeGreaterThan(unknown);
  });

  test('a 16 mm screw on a small lathe whose tunnel nobody measured is a stop', () => {
    const stop = 'stop sixteen-on-a-small-lathe';
    const sixteen = { 'cross-screw': 'ball-screw-16' };
    expect(findingsOf(pathOf(sixteen, 'small'))).toContain(stop);
    expect(findingsOf(pathOf(sixteen, 'small', measured))).not.toContain(stop);
    expect(findingsOf(pathOf(sixteen))).not.toContain(stop);
  });
});
