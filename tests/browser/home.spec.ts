import { expect, expectNoAxeViolations, test } from './fixtures.ts';

test('the home page opens, is named and is accessible', async ({ page }) => {
  await page.goto('');
  await expect(page).toHaveTitle(/Halfnut/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expectNoAxeViolations(page);
});
