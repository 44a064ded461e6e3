// Figures in inches: the same answers, only written otherwise.
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { exampleOf } from '../../../src/calc/working-figures/figure.ts';
import { workingFigures } from '../../../src/calc/working-figures/list.ts';
import { runUp } from '../../../src/calc/working-figures/run-up.ts';
import { whip } from '../../../src/calc/working-figures/whip.ts';
import { keep } from '../../../src/islands/memory.ts';
import { inUnits } from '../../../src/islands/working/in-units.ts';
import { Working } from '../../../src/islands/working/Working.tsx';

afterEach(() => {
  cleanup();
  window.localStorage.clear();
});

test.each(workingFigures)(
  '$id: nothing is left in millimetres but an area, and limits are no wider',
  (figure) => {
    const inch = inUnits(figure, 'inch');
    const values = exampleOf(figure);
    const [before, after] = [figure.answer(values), inch.answer(values)];
    expect(after.rows.map(({ value }) => value)).toEqual(before.rows.map(({ value }) => value));
    const written = [
      ...inch.inputs.filter(({ metricOnly }) => !metricOnly),
      ...after.rows,
      inch.across,
      inch.up,
    ].map((each) => each.written.unit);
    expect(written.filter((unit) => /^mm(?!²)/.test(unit))).toEqual([]);
    expect(`${inch.across.label} ${inch.up.label}`).not.toMatch(/\bmm\b/);
    for (const [
      at,
      {
        low,
        high,
        example,
        written: { per },
      },
    ] of inch.inputs.entries()) {
      const metric = figure.inputs[at]!;
      expect(low / per).toBeGreaterThanOrEqual((metric.low / metric.written.per) * (1 - 1e-9));
      expect(high / per).toBeLessThanOrEqual((metric.high / metric.written.per) * (1 + 1e-9));
      expect(example).toBeGreaterThanOrEqual(low);
      expect(example).toBeLessThanOrEqual(high);
    }
  },
);

test('an inch is 25.4 mm, also of a speed', () => {
  const [pitch] = inUnits(runUp, 'inch').inputs;
  expect(pitch!.written.per * 0.0254).toBeCloseTo(1, 12);
  const feed = inUnits(runUp, 'inch')
    .answer(exampleOf(runUp))
    .rows.find(({ id }) => id === 'feed')!;
  // 400 turns a minute of 1.5 mm are 600 mm a minute.
  expect(feed.value * feed.written.per).toBeCloseTo(600 / 25.4, 9);
  expect(feed.written.unit).toBe('in/min');
});

test('a reader who chose inches elsewhere finds them here', async () => {
  keep('units', 'inch');
  render(<Working figure={whip} />);
  expect(((await screen.findByLabelText('Length between the bearings')) as HTMLInputElement).value).toBe(
    '23.62',
  );
  expect(within(screen.getByRole('table')).getByText('23.622 in')).toBeTruthy();
});
