import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const LIGHT = 'rgb(247, 243, 234)';
const DARK = 'rgb(18, 32, 43)';

const paper = (page: Page): Promise<string> =>
  page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
const choice = (page: Page, name: string) =>
  page.getByRole('radiogroup', { name: 'Colours of the page' }).getByRole('radio', { name });

test('colours follow the system until one is chosen, and the choice is kept', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('words/');
  await expect(choice(page, 'System')).toBeChecked();
  expect(await paper(page)).toBe(LIGHT);

  await choice(page, 'System').focus();
  await page.keyboard.press('ArrowLeft');
  await expect(choice(page, 'Dark')).toBeChecked();
  expect(await paper(page)).toBe(DARK);

  await page.goto('safety/');
  await expect(choice(page, 'Dark')).toBeChecked();
  expect(await paper(page)).toBe(DARK);

  await choice(page, 'System').check();
  expect(await paper(page)).toBe(LIGHT);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await paper(page)).toBe(DARK);
});

test('a chosen colour is there before the first paint', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('words/');
  await choice(page, 'Dark').check();
  await page.goto('book/', { waitUntil: 'commit' });
  await page.waitForFunction(() => document.body !== null);
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark');
});

test('a plan printed from a dark screen is black on white', async ({ page }) => {
  await page.goto('safety/');
  await choice(page, 'Dark').check();
  await page.emulateMedia({ media: 'print' });
  expect(
    await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--paper')),
  ).toBe('#fff');
});
