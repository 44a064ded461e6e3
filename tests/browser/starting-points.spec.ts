import { figureWords } from '../../src/components/starting/figures.ts';
import { ownerById, startingPoint } from '../../src/components/starting/points.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { expect, test } from './fixtures.ts';

const point = startingPoint(ownerById('learning-on-a-spare'));
const said = figureWords(point.report);

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('the list names every owner with money, hours and weeks, and leads to a page that reads whole', async ({
    page,
  }) => {
    await page.goto('starting-points/');
    await expect(page.getByRole('article')).toHaveCount(inventedOwners.length);
    const row = page.getByRole('article').filter({ hasText: point.owner.name });
    for (const figure of Object.values(said)) await expect(row).toContainText(figure);
    await row.getByRole('link').click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(point.owner.name);
    await expect(page.locator('[data-figure=money]')).toContainText(said.money);
    await expect(page.locator('[data-figure=hours]')).toContainText(said.hours);
    await expect(page.locator('[data-figure=weeks]')).toContainText(said.weeks);
    await expect(page.getByText(`edition ${point.path.edition}`)).toBeVisible();
    for (const name of [
      'Is it worth it',
      'What was chosen, and why',
      'What to look at again',
      'Where one may stop',
    ])
      await expect(page.getByRole('heading', { name })).toBeVisible();
  });
});
