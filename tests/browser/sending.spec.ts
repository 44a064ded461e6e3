import type { Locator, Page } from '@playwright/test';
import { toBuy } from '../../src/calc/buying.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';
import { watch } from './support/watch.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const { part } = toBuy(evaluate(path, currentEdition)).find(
  ({ pack, unit, qty }) => pack === 1 && unit === 'each' && qty === 1,
)!;

test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

async function openList(page: Page, fragment: string): Promise<void> {
  await page.goto(`buy-list/#${fragment}`);
  await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
}

/** On a phone the groups are folded. */
async function unfold(page: Page): Promise<void> {
  const shut = page.getByRole('button', { name: /^Show \d+ lines?$/ });
  for (let left = await shut.count(); left > 0; left -= 1)
    if (await shut.first().isVisible()) await shut.first().click();
}

async function quote(line: Locator): Promise<void> {
  await line.getByRole('button', { name: /^Add a price/ }).click();
  await line.getByLabel('Your price, before carriage and tax').fill('61.25');
  await line.getByLabel('Shop').fill('Corner metals');
  await line.getByLabel('Note').fill('asked twice');
  await line.getByRole('button', { name: 'Keep', exact: true }).click();
}

const sums = (page: Page): Promise<string[]> => page.locator('.sum-row').allTextContents();

test('a link takes prices along when they are ticked, and opens elsewhere to the same cents', {
  tag: '@once',
}, async ({ page, browser, baseURL }) => {
  await openList(page, encodePath(path));
  await page.getByRole('button', { name: 'That is all I have of these' }).click();
  await unfold(page);
  await quote(page.locator(`#line-${part}`));
  await expect(page.locator('.sum-row', { hasText: 'Quoted' })).toContainText('$61.25');

  await page.getByRole('button', { name: 'Send this path' }).click();
  const sheet = page.getByRole('dialog', { name: 'Send this path' });
  const link = sheet.getByRole('textbox', { name: 'The link' });
  await expect(link).not.toHaveValue(/orders=/);
  await sheet.getByRole('checkbox', { name: /prices, orders/ }).check();
  await expect(link).toHaveValue(new RegExp(`orders=${part}:quoted/61\\.25`));
  expect(await link.inputValue()).not.toMatch(/corner|asked/i);
  await sheet.getByRole('button', { name: 'Copy the link' }).click();
  await expect(sheet.getByRole('status')).toContainText('Copied.');
  await sheet.getByRole('button', { name: 'Show it as a code' }).click();
  await expect(sheet.getByRole('img', { name: 'The link as a code to photograph' })).toBeVisible();
  await expectNoAxeViolations(page, { part: '.send-sheet' });

  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toBe(await link.inputValue());
  const elsewhere = await browser.newContext();
  const problems = await watch(elsewhere, new URL(baseURL!).origin);
  const friend = await elsewhere.newPage();
  await friend.goto(copied);
  await expect(friend.locator('.sum-row', { hasText: 'Quoted' })).toContainText('$61.25');
  expect(await sums(friend)).toEqual(await sums(page));
  await unfold(friend);
  await expect(friend.locator(`#line-${part}`)).toContainText('shop-a');
  expect(problems).toEqual([]);
  await elsewhere.close();
});
