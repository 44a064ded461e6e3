import type { Page } from '@playwright/test';
import { currentEdition } from '../../src/content/edition.ts';
import { choosingOwners } from '../../src/content/owners-choosing.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';
import { toPaper } from './support/on-paper.ts';

const owner = choosingOwners.find(({ id }) => id === 'handles-on-the-only-lathe')!;
const fragment = encodePath({ ...owner.path, edition: currentEdition.edition });
const long = { timeout: 30_000 };

const table = (page: Page) => page.getByRole('table', { name: 'Side by side' });
const heads = (page: Page) => table(page).locator('thead th');
const sentence = (page: Page) => page.locator('.verdict').first();

/** Everything that a comparison says in figures. */
async function figures(page: Page): Promise<string[]> {
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0, long);
  await expect(page.getByText('The same as a table')).toBeVisible(long);
  return [
    ...(await table(page).locator('.figure').allInnerTexts()),
    ...(await page.locator('.verdict').allInnerTexts()),
  ];
}

async function answeredOtherwise(page: Page, question: string, answer: string): Promise<void> {
  await page.getByLabel('A, answered otherwise').selectOption(question);
  await page.getByLabel('With this answer').selectOption(answer);
  await page.getByRole('button', { name: /^Put it beside A ?: A, answered otherwise/ }).click();
}

test('a path, a copy answered otherwise, why they differ, its answer tried and undone, sent, opened elsewhere, printed', async ({
  page,
  browser,
  isMobile,
}) => {
  test.setTimeout(90_000);
  await page.goto(`compare/#${fragment}`);
  await expect(page.getByRole('heading', { level: 1, name: 'Three ways, side by side' })).toBeVisible(long);
  await expect(heads(page)).toHaveCount(isMobile ? 2 : 3, long);

  await page.getByRole('button', { name: /^Take away ?: B/ }).click();
  await page.getByRole('button', { name: /^Take away ?: B/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'One way so far' })).toBeVisible();
  await answeredOtherwise(page, 'lubrication', 'one-shot-oiler');
  await expect(heads(page).nth(1)).toContainText('As A, but: one pull oils everything', long);
  expect(page.url()).toMatch(/;lubrication=one-shot-oiler$/);
  await expect(sentence(page)).toHaveText(/^A costs (more|less) than B in \d+ of 20 ways it could turn out/);
  await page.getByText('The twenty as figures').first().click();
  const before = await figures(page);

  const hidden = page.getByRole('button', { name: /^show ?the rows that are the same/ });
  await expect(page.getByText(/^\d+ rows? differs?\. \d+ rows? (is|are) the same/)).toBeVisible();
  const shown = await table(page).locator('tbody.group tr:has(> th[scope="row"])').count();
  await hidden.click();
  await expect(table(page).locator('tbody.group tr:has(> th[scope="row"])')).toHaveCount(15);
  expect(shown).toBeLessThan(15);

  await page.getByText('The same as a table').click();
  const shares = page.getByRole('table', { name: 'Why A and B differ' });
  const [share, total] = await Promise.all([
    shares.locator('tbody tr', { hasText: 'Lubrication' }).locator('td').nth(2).textContent(),
    shares.locator('tfoot td').nth(2).textContent(),
  ]);
  expect(share).toBe(total);
  await page.getByRole('button', { name: /^try B’s answer in A: Lubrication/ }).click();
  await expect(page.locator('.receipt')).toContainText('Lubrication: One pull oils everything', long);
  await expect(page.getByText('Nothing that you answered or measured differs between them.')).toBeVisible(
    long,
  );
  await page.getByRole('button', { name: /^Undo ?: Lubrication/ }).click();
  await expect(page.getByRole('button', { name: /^try B’s answer in A: Lubrication/ })).toBeVisible(long);
  expect(await figures(page)).toEqual(before.length > 0 ? expect.arrayContaining(before) : []);

  await page.getByRole('link', { name: 'Questions', exact: true }).click();
  await page.getByRole('link', { name: 'Compare', exact: true }).click();
  await expect(heads(page).nth(1)).toContainText('As A, but: one pull oils everything', long);
  const here = await figures(page);
  await expectNoAxeViolations(page);

  const friend = await browser.newContext({
    viewport: isMobile ? { width: 320, height: 700 } : { width: 768, height: 900 },
  });
  const theirs = await friend.newPage();
  await theirs.goto(page.url());
  await expect(heads(theirs).nth(1)).toContainText('As A, but: one pull oils everything', long);
  expect(await figures(theirs)).toEqual(here);
  expect(
    await theirs.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0);
  await toPaper(theirs);
  await expect(theirs.locator('.link-text')).toContainText(';lubrication=one-shot-oiler');
  await expect(theirs.getByText(`Prices of edition ${currentEdition.edition}`)).toBeVisible();
  await expect(theirs.getByRole('button')).toHaveCount(0);
  await friend.close();
});
