import type { Page } from '@playwright/test';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';

const START = 'ways/#1?control=motion-card-pc&edition=2026-12&size=medium';
const fragment = (page: Page): string => new URL(page.url()).hash;
const find = (page: Page) => page.getByRole('button', { name: 'Find the ways through' });
const found = (page: Page) => page.getByRole('heading', { name: /no other beats/ });
const row = (page: Page, number: number) => page.locator(`#way-${number}`);

async function setMoney(page: Page, text: string): Promise<void> {
  const field = page.getByLabel(/my limit, money/);
  await field.fill(text);
  await field.blur();
}

async function open(page: Page, place = START): Promise<void> {
  await page.goto(place);
  await expect(page.getByText(/ways fit the rules\./)).toBeVisible();
}

/** Leaves a handful of questions free, so that a search is over in a moment. */
async function freeFew(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'None', exact: true }).click();
  await page.getByText(/^Spindle \d of/).click();
  const ticks = page.locator('.ways-free details[open] input');
  await ticks.nth(0).check();
  await ticks.nth(1).check();
  await page.getByText(/^Carriage \d of/).click();
  await page.locator('.ways-free details[open] input').first().check();
  await expect(page.getByText(/3 questions may be answered anew/)).toBeVisible();
  await expect(page.getByText(/ways fit the rules\./)).toBeVisible();
}

test('limits, a search, its chart and list, a way opened and taken back', { tag: '@once' }, async ({
  page,
}) => {
  await open(page);
  await setMoney(page, '9k');
  await page.getByLabel('It must cut threads').check();
  await find(page).click();
  await expect(found(page)).toBeVisible({ timeout: 45_000 });
  await expect(page.getByText(/by rules, limits and bounds, without a visit/)).toBeVisible();
  await expect(page.getByText(/Limits it was asked to keep: money: at most \$9,000;/)).toBeVisible();
  await expect(page.getByText('Least money').first()).toBeVisible();

  const spots = page.getByRole('listbox', { name: /Money against hours/ }).getByRole('option');
  const count = await spots.count();
  expect(count).toBeGreaterThan(1);
  await spots.first().focus();
  await page.keyboard.press('ArrowRight');
  await expect(spots.nth(1)).toBeFocused();
  await expect(page.locator('.ways-readout')).toContainText('Way 2:');
  await page.keyboard.press('End');
  await expect(spots.nth(count - 1)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(row(page, count)).toBeFocused();

  const before = fragment(page);
  await expect(row(page, 2)).toContainText(/Against way 1 it .* gives up \$/);
  await row(page, 2)
    .getByText(/Differs from your plan in/)
    .click();
  await row(page, 2)
    .getByRole('button', { name: /Open this way/ })
    .click();
  await expect(row(page, 2)).toContainText('This is your plan now.');
  expect(fragment(page)).not.toBe(before);
  await expect(page.locator('.receipt')).toContainText(/Way 2: \d+ answers? set anew\..*Money: .*Hours: /);
  await page.getByRole('button', { name: /Undo.*Way 2/ }).click();
  await expect(row(page, 2).getByRole('button', { name: /Open this way/ })).toBeVisible();
  expect(fragment(page)).toBe(before);
});

test('the link of a way opens it elsewhere', { tag: '@once' }, async ({ page }) => {
  await open(page);
  await freeFew(page);
  await find(page).click();
  await expect(found(page)).toBeVisible();
  const link = await row(page, 1)
    .getByRole('link', { name: /Its plan/ })
    .getAttribute('href');
  expect(link).toMatch(/\/plan\/#1\?.*control=motion-card-pc/);
  await page.goto(link ?? '');
  await expect(page.getByRole('heading', { name: /Money, everything in/ })).toBeVisible();
});

test('limits that nothing keeps say which would have to give way, and take it off', { tag: '@once' }, async ({
  page,
}) => {
  await open(page);
  await freeFew(page);
  await setMoney(page, '100');
  await find(page).click();
  await expect(page.getByRole('heading', { name: 'No way keeps to all of these limits' })).toBeVisible();
  await page.getByRole('button', { name: /Take off and search again.*money: at most \$100/ }).click();
  await expect(found(page)).toBeVisible();
  await expect(page.getByLabel(/my limit, money/)).toHaveValue('');
});

test('what cannot be read as a limit says so and stays in its field', { tag: '@once' }, async ({ page }) => {
  await open(page);
  await setMoney(page, 'lots');
  await expect(page.getByText('We cannot find a number in this.')).toBeVisible();
  const drill = page.getByLabel('Hole to drill under power');
  await drill.fill('400');
  await drill.blur();
  await expect(page.getByText(/We expect 0.5 to 50 mm/)).toBeVisible();
  await expect(drill).toHaveValue('400');
  await drill.fill('8 mm');
  await drill.blur();
  await expect(page.getByText(/We expect 0.5 to 50 mm/)).toHaveCount(0);
});

test('a search that would take long can be stopped, and another begun', { tag: '@once' }, async ({
  page,
}) => {
  await open(page);
  for (const summary of await page.locator('.ways-free summary').all()) await summary.click();
  for (const tick of await page.locator('.ways-free input').all()) await tick.check();
  await find(page).click();
  await expect(page.getByRole('heading', { name: 'Searching' })).toBeVisible();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Stopped' })).toBeVisible();
  for (const summary of await page.locator('.ways-free summary').all()) await summary.click();
  await freeFew(page);
  await find(page).click();
  await expect(found(page)).toBeVisible();
});

test('where no worker can be had it says so and searches on the page', { tag: '@once' }, async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'Worker', { value: undefined }));
  await open(page);
  await find(page).click();
  await expect(page.getByText(/the search runs on the page in slices/)).toBeVisible();
  await expect(found(page)).toBeVisible({ timeout: 45_000 });
});

test('results fit a page 320 px wide and the page is accessible, in the dark too', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.emulateMedia({ colorScheme: 'dark' });
  await open(page);
  await freeFew(page);
  await setMoney(page, '9000');
  await find(page).click();
  await expect(found(page)).toBeVisible();
  await expect(page.locator('.chart-line')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await expectNoAxeViolations(page);
});
