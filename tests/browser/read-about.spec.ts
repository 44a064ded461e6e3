import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';

const link = encodePath(referencePaths[0]!.path);

test('from a check on the plan to its section in the book and back: the path comes along, the place is reached', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto(`plan/#${link}`);
  const check = page.locator('#check-cross-play');
  await check.getByRole('link', { name: 'Cross-slide screw and tunnel' }).click();
  await expect(page).toHaveURL(`book/topics/cross-slide-screw/?place=how-to-measure#${link}`);
  await expect(page.locator('#how-to-measure')).toBeFocused();
  await expect(page.locator('#how-to-measure')).toBeInViewport();

  await page.locator('#check-cross-play').getByRole('link').click();
  await expect(page).toHaveURL(`plan/?place=check-cross-play#${link}`);
  await expect(check).toBeFocused();
  await expect(check).toBeInViewport();

  await page.goBack();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Cross-slide screw and tunnel');
  await page.goForward();
  await expect(check).toBeInViewport();
});
