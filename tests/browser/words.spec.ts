import { expect, expectNoAxeViolations, test } from './fixtures.ts';

test('a word in the text leads to its meaning and back, page by page through the book @once', async ({
  page,
}) => {
  await page.goto('book/carriage/');
  await page.getByRole('link', { name: /^Next: / }).click();
  await expect(page).toHaveURL(/\/book\/topics\/carriage-drive\/$/);
  await expectNoAxeViolations(page);
  await page.locator('.topic-text a.gloss', { hasText: /^lead screw$/ }).click();
  await expect(page).toHaveURL(/\/words\/#word-lead-screw$/);
  const entry = page.locator('#word-lead-screw');
  await expect(entry).toBeInViewport();
  await entry.getByRole('link', { name: 'Carriage drive', exact: true }).click();
  await page.getByRole('link', { name: /^Before: Room 3/ }).click();
  await expect(page).toHaveURL(/\/book\/carriage\/$/);
});
