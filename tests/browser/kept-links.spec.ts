import { hoursRange, moneyRange, weeksRange } from '../../src/islands/shared/format.ts';
import { keptLinks } from '../links/corpus.ts';
import { halvesOf } from '../links/figures.ts';
import { expect, test } from './fixtures.ts';

const TEN = [
  'nothing answered',
  'reference',
  'reference, usual things owned',
  'thread-synchroniser-with-cross-feed',
  'frugal',
  'standalone',
  'stiff-small-batch',
  'reference, large',
  'not-sure-yet',
  'hollow-near-the-chuck',
];

test('links that people may have kept open to the figures that were recorded', async ({ page }) => {
  for (const what of TEN) {
    const kept = keptLinks().find((link) => link.what === what)!;
    const { money, hours, 'out of use': out } = halvesOf(what);
    await page.goto('about:blank');
    await page.goto(`lathe/#${kept.fragment}`);
    const card = page.locator('#card');
    await expect(card, what).toContainText(moneyRange(...money));
    await expect(card, what).toContainText(hoursRange(...hours));
    await expect(card, what).toContainText(weeksRange(...out));
  }
});
