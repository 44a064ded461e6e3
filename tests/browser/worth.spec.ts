import type { Page } from '@playwright/test';
import { currentEdition } from '../../src/content/edition.ts';
import { choosingOwners } from '../../src/content/owners-choosing.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';

const owner = choosingOwners.find(({ id }) => id === 'handles-on-the-only-lathe')!;
const fragment = encodePath({ ...owner.path, edition: currentEdition.edition });

async function open(page: Page, hash = `#${fragment}`): Promise<void> {
  await page.goto(`worth-it/${hash}`);
  await expect(page.getByRole('heading', { name: 'Parts you make again and again' })).toBeVisible({
    timeout: 40_000,
  });
}

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.blur();
}

const SWINGS = 'Choices you can still make';
const PAYBACK = 'Years until it has paid for itself';

test('parts typed give hours and pay-back, bad figures stay with a message, and a reload keeps them', {
  tag: '@once',
}, async ({ page }) => {
  test.setTimeout(180_000);
  await open(page);
  await expect(page.getByRole('table', { name: PAYBACK })).toHaveCount(0);
  await page.getByRole('button', { name: 'Add a family of parts' }).click();
  await type(page, 'Name of these parts', 'Knobs');
  await type(page, 'Batches a year', '24');
  const rows = page.getByRole('table', { name: 'Each family, at your own times' }).getByRole('row');
  await expect(rows.nth(1)).toContainText('720');
  await expect(page.getByRole('table', { name: PAYBACK })).toContainText('At $30 an hour');
  await type(page, 'Pieces in a batch', 'many');
  await expect(page.getByLabel('Pieces in a batch')).toHaveValue('many');
  await expect(page.getByText('We cannot find a number in this.')).toBeVisible();
  await expect(rows.nth(1)).toContainText('720');
  await type(page, 'Price outside, for one', '4.50');
  await expect(page.getByText('Outside work avoided: about $3,200 a year')).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Name of these parts')).toHaveValue('Knobs', { timeout: 40_000 });
  await expect(page.getByLabel('Batches a year')).toHaveValue('24');
  expect(page.url()).not.toContain('Knobs');
});

test('hours that are the hobby hide pay-back and say what is bought; undo takes it back', async ({
  page,
}) => {
  await open(page);
  await page.getByRole('button', { name: 'Add a family of parts' }).click();
  await expect(page.getByRole('table', { name: PAYBACK })).toBeVisible({ timeout: 30_000 });
  await page.getByRole('checkbox', { name: 'My hours are the hobby' }).check();
  await expect(page.getByRole('heading', { name: 'The hobby you buy' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('table', { name: PAYBACK })).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('table', { name: PAYBACK })).toBeVisible({ timeout: 30_000 });
});

test('alternatives stand in the same rows, chosen by tick or by two pickers', async ({ page, isMobile }) => {
  await open(page);
  const beside = page.getByRole('table', { name: 'Side by side' });
  const heads = beside.locator('thead th');
  await expect(heads.filter({ hasText: 'Your plan' })).toHaveCount(1);
  await expect(
    page.getByRole('table', { name: 'Your plan and all 18 others in short' }).locator('tbody tr'),
  ).toHaveCount(19);
  if (isMobile) {
    await expect(heads).toHaveCount(2);
    await page.getByLabel('Left').selectOption('readout');
  } else {
    await expect(heads).toHaveCount(4);
    await page.getByText('Change the columns').click();
    await expect(page.getByRole('checkbox', { name: 'Digital readout on both slides' })).toBeDisabled();
    await page.getByRole('checkbox', { name: 'Send the parts out' }).uncheck();
    await page.getByRole('checkbox', { name: 'Digital readout on both slides' }).check();
  }
  await expect(heads.filter({ hasText: 'Digital readout' })).toHaveCount(1);
  const cells = await beside
    .locator('tbody tr:has(> td)')
    .evaluateAll((rows) => rows.map((row) => row.children.length));
  expect(new Set(cells).size).toBe(1);
});

test('what swings it: two charts, three kinds, a blocked end with its reason, and tables that say the same', {
  tag: '@once',
}, async ({ page }) => {
  await open(page);
  const choices = page.getByRole('region', { name: SWINGS });
  await expect(choices).toBeVisible({ timeout: 40_000 });
  await expect(page.getByRole('region', { name: 'Things yet to be found out' })).toContainText(
    'To find out now',
  );
  await expect(choices.getByRole('listitem')).toHaveCount(12);
  await expect(choices.getByText('is blocked:').first()).toBeVisible();
  await choices.getByRole('button', { name: /more$/ }).click();
  expect(await choices.getByRole('listitem').count()).toBeGreaterThan(12);
  await page.getByRole('radio', { name: 'Hours', exact: true }).check();
  await expect(page.getByText(/^typical \d+ h$/)).toBeVisible();
  await page.getByText('The same as two tables').click();
  await expect(page.getByRole('table', { name: 'Choices, hours' })).toBeVisible();
  await expect(page.getByText('One at a time: combinations can differ.')).toBeVisible();
});

test('with nothing answered it is an outline, also where no worker can be had, 320 pixels wide', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.addInitScript(() => Reflect.deleteProperty(window, 'Worker'));
  await page.setViewportSize({ width: 320, height: 700 });
  await open(page, '');
  await expect(page.getByText('This is an outline, not yet your plan.')).toBeVisible();
  await expect(page.getByText('so there is no judgement')).toBeVisible();
  await expect(page.getByRole('region', { name: SWINGS })).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Add a family of parts' }).click();
  await expect(page.getByRole('table', { name: PAYBACK })).toBeVisible({ timeout: 60_000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
