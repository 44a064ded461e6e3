// Numbers that a page has from a formula are what the formula gives, in the figures that the page shows.
import { expect, test } from 'vitest';
import type { DrillPoint } from '../../src/calc/formulas/drill-materials.ts';
import { drillLargest, drillThrust, drillTorque } from '../../src/calc/formulas/drilling.ts';
import { gangTravel } from '../../src/calc/formulas/reach.ts';
import { screwThrust } from '../../src/calc/formulas/screw-drive.ts';
import { toolHeightError } from '../../src/calc/formulas/tool-forces.ts';
import { topicPages } from './topic-pages.ts';

const page = (id: string): string =>
  topicPages
    .find((each) => each.id === id)!
    .body.replaceAll('**', '')
    .replace(/\[([^\]]+)\]\([^)]*\)|<[^>]+>/g, '$1');
const count = (written: string): number => Number(written.replaceAll(',', ''));
const steel = { material: 'mild-steel', feedShare: 1 / 80 } as const;

test('the table of pushes on the page about drilling', () => {
  const columns: readonly DrillPoint[] = ['split', 'sharp', 'worn', 'worn-out'];
  const rows = [...page('drilling').matchAll(/^\| (\d+) \|(.+)\|$/gm)];
  expect(rows).toHaveLength(3);
  for (const [, across, cells = ''] of rows) {
    const diameter = Number(across) / 1000;
    const said = [...cells.matchAll(/[\d,]+/g)].map(([force]) => count(force));
    const given = columns.map((point) =>
      drillThrust.compute({ ...steel, point, diameter, feed: diameter * steel.feedShare }),
    );
    expect(said).toEqual(given.map((force) => Math.round(force / 10) * 10));
  }
});

test('the drills that the example carriage pushes, with the margin of its motor and friction kept back', () => {
  const push = screwThrust.compute({
    torque: 1.1,
    ratio: 2,
    lead: 0.005,
    efficiency: 0.9,
    beltEfficiency: 0.95,
  });
  const largest = (margin: number, point: DrillPoint) =>
    1000 * drillLargest.compute({ ...steel, point, thrust: push / margin - 100 });
  expect(page('drilling')).toContain('about 2,360 N at drilling speed');
  expect(push).toBeCloseTo(2364, 0);
  expect(page('drilling')).toContain('about 7 mm from solid with the first and 8 mm with the second');
  expect([2, 1.5].map((margin) => Math.round(largest(margin, 'sharp')))).toEqual([7, 8]);
  expect(page('drilling')).toContain('A split point takes the second to almost 10 mm');
  expect(largest(1.5, 'split')).toBeGreaterThan(9.7);
  expect(largest(1.5, 'split')).toBeLessThan(10);
  expect(page('drilling')).toContain('A worn drill brings them down to 6 and 7 mm');
  expect([2, 1.5].map((margin) => Math.round(largest(margin, 'worn')))).toEqual([6, 7]);
});

test('what a drill of 10 mm asks of the spindle', () => {
  expect(page('drilling')).toContain('A 10 mm drill asks for about 6 N·m');
  expect(drillTorque.compute({ ...steel, diameter: 0.01, feed: 0.01 / 80 })).toBeCloseTo(6, 0);
});

test('travel for three tools in a row, and a tool off centre height', () => {
  const row = { tools: 3, toolPitch: 0.035, clearance: 0.005, pastCentre: 0.0015 };
  const travel = [20, 37].map((across) => 1000 * gangTravel.compute({ ...row, partRadius: across / 2000 }));
  expect(page('tool-posts')).toContain('ask for 87 mm with work of 20 mm, and for 95 mm with work of 37 mm');
  expect(travel.map(Math.round)).toEqual([87, 95]);
  expect(page('tool-posts')).toContain(
    'Set 0.2 mm off and zeroed at 20 mm, a tool is 0.023 mm wrong at 3 mm',
  );
  const error = toolHeightError.compute({ heightOffset: 0.2e-3, zeroDiameter: 0.02, diameter: 0.003 });
  expect(1000 * error).toBeCloseTo(0.023, 3);
});
