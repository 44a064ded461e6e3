import type { Page } from '@playwright/test';
import { evaluate } from '../../src/calc/evaluate.ts';
import { readingById } from '../../src/calc/schedule/readings.ts';
import { workingOf } from '../../src/calc/working.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const working = workingOf(path, currentEdition);
const report = evaluate(path, currentEdition);
const first = working.tasks[0]!;
/** A reading that has an upper limit, one place and stands in the first stages. */
const reading = working.readings.find(
  ({ atMost, places, show }) => atMost !== undefined && (places ?? 1) === 1 && show === 'length',
)!;

async function openBench(page: Page, fragment = encodePath(path)): Promise<void> {
  await page.goto(`bench/#${fragment}`);
  await expect(page.getByRole('region', { name: 'Next' })).toBeVisible({ timeout: 40_000 });
}

/** The list of one stage, opened at a task. */
async function openTask(page: Page, task: string): Promise<void> {
  const stage = report.stages.find(({ tasks }) => tasks.some(({ id }) => id === task))!;
  await page.getByLabel('Stage', { exact: true }).selectOption(stage.id);
  await page.locator(`#task-${task}`).getByRole('button', { name: /^More/ }).click();
}

test('a reading outside its limit says so and where to look; hours replace the estimate', async ({
  page,
}) => {
  await openBench(page);
  await openTask(page, reading.task);
  const card = page.locator(`#task-${reading.task}`);
  const field = card.getByLabel(reading.what, { exact: true });
  await field.fill(String(reading.atMost! * 1000 * 3));
  await field.blur();
  await expect(card.getByText('outside the limit').first()).toBeVisible();
  await expect(
    card.getByText(readingById.get(reading.id)!.points.say.slice(0, 40), { exact: false }),
  ).toBeVisible();
  await field.fill(String(reading.atMost! * 1000 * 0.9));
  await field.blur();
  await expect(card.getByText('outside the limit')).toHaveCount(0);
  await field.fill('about right');
  await field.blur();
  await expect(field).toHaveValue('about right');
  await expect(card.getByText('We cannot find a number in this.')).toBeVisible();
  await card.getByLabel('Hours spent so far').fill('2.5');
  await card.getByLabel('Hours spent so far').blur();
  await expect(page.locator('.lede')).toContainText('2.5 h written down');
});

test('a tick before its time is listed and stays', async ({ page }) => {
  await openBench(page);
  const late = working.tasks.find(({ tasks }) => tasks.includes(first.id))!;
  const stage = report.stages.find(({ tasks }) => tasks.some(({ id }) => id === late.id))!;
  await page.getByLabel('Stage', { exact: true }).selectOption(stage.id);
  await page.locator(`#task-${late.id}`).getByRole('checkbox').check();
  await expect(page.getByText('What is done and what the plan says do not agree.')).toBeVisible();
  await expect(page.locator(`#task-${late.id}`).getByRole('checkbox')).toBeChecked();
});
