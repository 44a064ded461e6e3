import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import { toBuy } from '../../src/calc/buying.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';
import { toPaper } from './support/on-paper.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const report = evaluate(path, currentEdition);
const lines = toBuy(report);
const wanted = lines.filter(({ pack, unit, qty }) => pack === 1 && unit === 'each' && qty === 1);
const [screw, motor] = [wanted[0]!, wanted[1]!];

async function openList(page: Page, fragment = encodePath(path)): Promise<void> {
  await page.goto(`buy-list/#${fragment}`);
  await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
  await page.getByRole('button', { name: 'That is all I have of these' }).click();
}

const lineOf = (page: Page, part: string): Locator => page.locator(`#line-${part}`);

/** On a phone the groups are folded; every journey unfolds what it needs. */
async function unfold(page: Page): Promise<void> {
  const shut = page.getByRole('button', { name: /^Show \d+ lines?$/ });
  for (let left = await shut.count(); left > 0; left -= 1) {
    const next = shut.first();
    if (!(await next.isVisible())) return;
    await next.click();
  }
}

async function quote(line: Locator, price: string, shop = ''): Promise<void> {
  await line.getByRole('button', { name: /^(Add a price|Change the price)/ }).click();
  await line.getByLabel('Your price, before carriage and tax').fill(price);
  if (shop) await line.getByLabel('Shop').fill(shop);
  await line.getByRole('button', { name: 'Keep', exact: true }).click();
}

/** The exact sum beside its name at the head of the list. */
const sum = (page: Page, name: string): Locator => page.locator('.sum-row', { hasText: name }).locator('dd');

test('a quote is kept, ordered, checked on arrival and remembered; undo takes it back', {
  tag: '@phone',
}, async ({ page }) => {
  await openList(page);
  await unfold(page);
  const line = lineOf(page, screw.part);
  await quote(line, '61.25', 'Corner metals');
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  await line.getByRole('button', { name: /^Ordered/ }).click();
  await expect(sum(page, 'Committed')).toHaveText('$61.25');
  await expect(page.getByRole('heading', { name: 'On the way' })).toBeVisible();
  await expect(line).toBeVisible();
  await line.getByRole('button', { name: /^Arrived/ }).click();
  await expect(page.getByRole('heading', { name: 'Arrived: check it now' })).toBeVisible();
  await page.reload();
  await expect(sum(page, 'Committed')).toHaveText('$61.25');
  expect(page.url()).not.toContain('Corner');
  await unfold(page);
  await quote(lineOf(page, motor.part), '80');
  await expect(sum(page, 'Quoted')).toHaveText('$80.00');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.sum-row', { hasText: 'Quoted' })).toHaveCount(0);
});

test('an amount in words is refused beside the field and nothing typed is lost', async ({ page }) => {
  await openList(page);
  await unfold(page);
  const line = lineOf(page, screw.part);
  await quote(line, 'forty', 'Corner metals');
  await expect(line.getByText('is not a number')).toBeVisible();
  await expect(line.getByLabel('Your price, before carriage and tax')).toHaveValue('forty');
  await expect(line.getByLabel('Shop')).toHaveValue('Corner metals');
});

test('the list goes out as CSV, comes back with a price, and is looked at before it counts', {
  tag: '@once',
}, async ({ page }) => {
  await openList(page);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Buy list as CSV' }).click();
  const saved = await readFile(await (await saving).path(), 'utf8');
  for (const { part } of lines) expect(saved).toContain(part);
  const bring = page.getByLabel('Choose a file');
  await bring.setInputFiles({
    name: 'quotes.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`id,unit price,note\r\n${screw.part},77.50,with nut\r\nflux capacitor,1.00,?\r\n`),
  });
  await expect(page.getByText('1 line found on your list')).toBeVisible();
  await expect(page.getByText('flux capacitor', { exact: false })).toBeVisible();
  await expect(page.locator('.sum-row', { hasText: 'Quoted' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Take 1 price' }).click();
  await expect(sum(page, 'Quoted')).toHaveText('$77.50');
});

test('the whole path is saved as a file and opens again; a file of another kind changes nothing', {
  tag: '@once',
}, async ({ page }) => {
  await openList(page);
  await unfold(page);
  await quote(lineOf(page, screw.part), '61.25', 'Corner metals');
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything as a file' }).click();
  const buffer = await readFile(await (await saving).path());
  const bring = page.getByLabel('Choose a file');
  await bring.setInputFiles({
    name: 'odd.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"a":1}'),
  });
  await expect(page.getByText('This file does not hold a path', { exact: false })).toBeVisible();
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  await page.evaluate(() => localStorage.clear());
  await page.goto('buy-list/');
  await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
  await page
    .getByLabel('Choose a file')
    .setInputFiles({ name: 'path.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  await expect(page).toHaveURL(new RegExp(encodePath(path).slice(0, 30).replace('?', '\\?')));
});

test('a link from elsewhere shows none of my quotes, is kept as a new path, and mine stays', {
  tag: '@once',
}, async ({ page }) => {
  await openList(page);
  await unfold(page);
  await quote(lineOf(page, screw.part), '61.25', 'Corner metals');
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  await page.goto('about:blank');
  await page.goto(`buy-list/#${encodePath({ ...path, size: 'large' })}`);
  await expect(page.getByText('not among your paths yet', { exact: false })).toBeVisible();
  await expect(page.locator('.sum-row', { hasText: 'Committed' })).toBeVisible();
  await expect(page.locator('.sum-row', { hasText: 'Quoted' })).toHaveCount(0);
  await unfold(page);
  await quote(lineOf(page, motor.part), '80');
  await expect(sum(page, 'Quoted')).toHaveText('$80.00');
  await expect(page.getByText('not among your paths yet', { exact: false })).toHaveCount(0);
  await page.goto('about:blank');
  await page.goto(`buy-list/#${encodePath(path)}`);
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
});

test('where the browser keeps nothing, the list says so and works', { tag: '@once' }, async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await openList(page);
  await unfold(page);
  await quote(lineOf(page, screw.part), '61.25');
  await expect(sum(page, 'Quoted')).toHaveText('$61.25');
  await expect(page.getByText('Quotes and orders last until it is closed', { exact: false })).toBeVisible();
});

test('printed, the list has every line with its quantity and a box to tick', async ({ page }) => {
  await openList(page);
  await toPaper(page);
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper must not count
  const paper = (await page.locator('main').innerText()).replace(/\s+/g, ' ');
  for (const { name } of lines) expect(paper).toContain(name.replace(/\s+/g, ' '));
  expect(paper).toContain(encodePath(path));
  await expect(page.locator('.buy-tick')).toHaveCount(lines.length);
  expect(await page.locator('.buy-tick').first().isVisible()).toBe(true);
  await expect(page.getByRole('button', { name: /^Add a price/ }).first()).toBeHidden();
});
