import { designFigures } from '../../src/calc/why-number.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';

const { path } = referencePaths[0]!;
const root = designFigures(path, ['carriage-screw-root'])['carriage-screw-root']!.value * 1000;

test('a figure of the book starts from the own path, is moved by keyboard, and starts again', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto(`book/topics/ball-screws/#${encodePath(path)}`);
  const figure = page.locator('#figure-whip');
  await figure.scrollIntoViewIfNeeded();
  const field = figure.getByLabel('Root diameter of the screw', { exact: true });
  await expect(figure.getByText('from your path', { exact: true }).first()).toBeVisible();
  expect(Number(await field.inputValue())).toBeCloseTo(root, 2);
  await expectNoAxeViolations(page, { part: '#figure-whip' });

  const length = figure.getByLabel('Length between the bearings', { exact: true });
  const before = await length.inputValue();
  await length.fill('1200');
  await expect(figure.getByRole('table').getByText('1,200 mm')).toBeVisible();
  await figure.getByLabel('Length between the bearings, slider').press('ArrowLeft');
  await expect(length).toHaveValue('1190');
  await figure.getByRole('button', { name: 'Start again' }).press('Enter');
  await expect(length).toHaveValue(before);
});

test.describe('with scripts off', () => {
  test.use({ javaScriptEnabled: false });

  test('a figure shows its picture, sentence, table and equations, and nothing that cannot be moved', {
    tag: '@once',
  }, async ({ page }) => {
    await page.goto('book/topics/motor-supply/');
    for (const figure of [page.locator('#figure-supply'), page.locator('#figure-leakage')]) {
      const picture = figure.getByRole('img');
      await expect(picture).toBeVisible();
      await expect(figure.locator('.working-says')).toHaveText((await picture.getAttribute('aria-label'))!);
      await expect(figure.getByRole('table').getByRole('row').first()).toBeVisible();
      await expect(figure.getByRole('group', { name: /^Equation: / }).first()).toBeVisible();
      await expect(figure.getByRole('slider')).toHaveCount(0);
      await expect(figure.getByRole('button')).toHaveCount(0);
    }
  });
});
