import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { worstBuilds } from '../../src/calc/worst-builds.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { Rods } from '../../src/islands/plan/Rods.tsx';
import { money } from '../../src/islands/shared/format.ts';
import { drawAll } from '../../src/islands/shared/in-turn.tsx';

afterEach(cleanup);

const { path } = referencePaths[0]!;
const report = evaluate({ ...path, edition: currentEdition.edition }, currentEdition);
const builds = worstBuilds(report.path, currentEdition, 20);
const press = (name: RegExp) => fireEvent.click(screen.getByRole('button', { name }));

test('the dearest stands first with its reasons and a ring round its washer, and the cheapest is the last', async () => {
  drawAll();
  const { container } = render(<Rods report={report} />);
  const rings = () =>
    [...container.querySelectorAll('.washer-picked')].map((ring) => ring.getAttribute('cx'));
  press(/one by one/);
  await screen.findByText(/the dearest of the 20/);
  const group = screen.getByRole('region', { name: 'The 20 ways one by one' });
  for (const { say } of builds[0]!.reasons) expect(group.textContent).toContain(say);
  expect(group.textContent).toContain(money(builds[0]!.money / 100));
  const [dearest] = rings();
  press(/^Dearer$/);
  expect(rings()).toEqual([dearest]);
  for (let step = 1; step < 20; step += 1) press(/^Cheaper$/);
  expect(group.textContent).toContain('the cheapest of the 20');
  expect(Number(rings()[0])).toBeLessThan(Number(dearest));
  expect(document.activeElement?.textContent).toBe('Cheaper');
  press(/^Enough/);
  expect(rings()).toEqual([]);
  await screen.findByRole('button', { name: /one by one/ });
});
