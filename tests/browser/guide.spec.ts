import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const fragment = (page: Page): string => new URL(page.url()).hash;
const card = (page: Page) => page.locator('#card');
const moneySaid = (page: Page) => card(page).getByText(/ways this could turn out cost/);

test('the first answers move the card and the link', { tag: '@once' }, async ({ page }) => {
  await page.goto('questions/which-lathe/');
  await expect(moneySaid(page)).toBeVisible();
  await expect(page.locator('.option input:checked')).toHaveCount(0);

  await page.locator('#which-lathe-spare-lathe').check();
  await expect(page.getByRole('status').getByText(/Money: .*Hours: /)).toBeVisible();
  expect(fragment(page)).toContain('which-lathe=spare-lathe');

  await page.getByRole('link', { name: 'Continue' }).click();
  await expect(page).not.toHaveURL(/\/which-lathe\//);
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
  await page.getByLabel('Not sure yet').check();
  expect(fragment(page)).toContain('not-sure');
  await expect(card(page).getByRole('row', { name: /Which lathe/i })).toBeVisible();
});

test('Back returns to the question before, with its answer and the later ones', async ({ page }) => {
  await page.goto('questions/control/');
  await page.locator('#control-motion-card-pc').check();
  await page.getByRole('link', { name: 'Continue' }).click();
  await page.locator('.option input:not(:disabled)').first().check();
  const both = fragment(page);

  await page.goBack();
  await expect(page).toHaveURL(/\/questions\/control\//);
  await expect(page.locator('#control-motion-card-pc')).toBeChecked();
  expect(fragment(page)).toBe(both);

  await page.reload();
  await expect(page.locator('#control-motion-card-pc')).toBeChecked();
  expect(fragment(page)).toBe(both);
});

test('Undo takes the last answer back', async ({ page }) => {
  await page.goto('questions/control/');
  await page.locator('#control-motion-card-pc').check();
  await page.getByRole('button', { name: /Undo/ }).click();
  await expect(page.locator('#control-motion-card-pc')).not.toBeChecked();
  expect(fragment(page)).not.toContain('control=');
});

test('a pasted link is taken as it stands, and Back brings the first one again', { tag: '@once' }, async ({
  page,
}) => {
  await page.goto('questions/control/#1?control=motion-card-pc&edition=2026-11&size=small');
  await expect(page.locator('#control-motion-card-pc')).toBeChecked();
  await page.goto('questions/control/#1?control=standalone-control&edition=2026-11&size=large');
  await expect(page.locator('#control-standalone-control')).toBeChecked();
  await page.goBack();
  await expect(page.locator('#control-motion-card-pc')).toBeChecked();
});

test('a blocked option says why and offers a way out and back', async ({ page }) => {
  await page.goto('questions/motor-supply/#1?drives=multi-axis-board&edition=2026-11&size=medium');
  const blocked = page.locator('.option.is-blocked').first();
  await expect(blocked.getByText('Not as things stand.')).toBeVisible();
  await expect(blocked.locator('input')).toBeDisabled();
  await blocked
    .getByRole('link', { name: /^Change: / })
    .first()
    .click();
  await expect(page).toHaveURL(/\/questions\/drives\/\?back=motor-supply/);
  await page.getByRole('link', { name: /^Return to: / }).click();
  await expect(page).toHaveURL(/\/questions\/motor-supply\//);
});

test('an answer that an earlier one rules out is kept and asked again', async ({ page }) => {
  await page.goto(
    'questions/motor-supply/#1?drives=multi-axis-board&edition=2026-11&motor-supply=mains-direct',
  );
  await expect(page.getByText('Please decide again.')).toBeVisible();
  expect(fragment(page)).toContain('motor-supply=mains-direct');
});

test('a question that does not arise says why and leads on', async ({ page }) => {
  await page.goto('questions/cross-screw/#1?driven-axes=carriage-only&edition=2026-11&size=medium');
  await expect(page.getByText('This question is not asked on your path.')).toBeVisible();
  await page.getByRole('link', { name: /^Next question/ }).click();
  await expect(page).not.toHaveURL(/\/cross-screw\//);
});

test('a damaged link opens what it can and lists the rest', { tag: '@once' }, async ({ page }) => {
  await page.goto('questions/control/#1?control=motion-card-pc&colour=blue&size=huge&swing=wide');
  const notice = page.locator('.notice').filter({ hasText: 'Part of this link could not be used' });
  await expect(notice.getByRole('listitem')).toHaveCount(3);
  await expect(notice).toContainText('colour');
  await expect(page.locator('#control-motion-card-pc')).toBeChecked();
  await notice.getByRole('button').click();
  await expect(notice).toHaveCount(0);
});

test('words that hold no path open an empty sheet and say so', { tag: '@once' }, async ({ page }) => {
  await page.goto('questions/control/#how-are-you');
  await expect(page.getByText(/does not hold a path/)).toBeVisible();
});

test('the last path is remembered on this device and can be left behind', async ({ page, context }) => {
  await page.goto('questions/control/');
  await page.locator('#control-motion-card-pc').check();
  const second = await context.newPage();
  await second.goto('questions/control/');
  await expect(second.getByText(/gave last time/)).toBeVisible();
  await expect(second.locator('#control-motion-card-pc')).toBeChecked();
  await second.getByRole('button', { name: 'Start with no answers' }).click();
  await expect(second.locator('#control-motion-card-pc')).not.toBeChecked();
  await expect(page.getByText(/Another tab/)).toHaveCount(0);
  await second.goto('shelf/');
  await expect(second.locator('.shelf-path')).toHaveCount(1);
});

test('a browser that keeps nothing still works and says so', { tag: '@once' }, async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new Error('refused');
      },
    });
  });
  await page.goto('questions/control/');
  await page.locator('#control-motion-card-pc').check();
  await expect(page.getByText(/keeps nothing for this page/)).toBeVisible();
  expect(fragment(page)).toContain('control=motion-card-pc');
});

test('a limit stands on the rod and is counted', async ({ page }) => {
  await page.goto('questions/control/');
  await expect(moneySaid(page)).toBeVisible();
  await card(page)
    .getByLabel(/my limit, money/)
    .fill('1.2k');
  await card(page)
    .getByLabel(/my limit, money/)
    .blur();
  await expect(moneySaid(page)).toContainText('within your $1,200');
});

test('the list shows how every question stands, and leads to one and back', async ({ page }) => {
  await page.goto('questions/#1?control=motion-card-pc&hand-use=not-sure&edition=2026-11&size=medium');
  const row = page.getByRole('row', { name: /^Control/ }).first();
  await expect(row.getByText(/card/i)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Check your answers' })).toBeVisible();
  await row.getByRole('link', { name: /Change/ }).click();
  await expect(page).toHaveURL(/\/questions\/control\/\?back=check#1\?/);
  await page.getByRole('link', { name: 'Return to your answers' }).click();
  await expect(page).toHaveURL(/\/questions\/#1\?.*control=motion-card-pc/);
});

test('figures of the lathe are read as people write them', async ({ page }) => {
  await page.goto('lathe/');
  await expect(moneySaid(page)).toBeVisible();
  const swing = page.getByLabel('Swing over the bed');
  await swing.fill('10 in');
  await swing.blur();
  await expect.poll(() => fragment(page)).toContain('swing=254');
  await expect(swing).toHaveValue('10 in');
  const sized = page.getByText(/^Your swing of .* makes it a large lathe/);
  await swing.fill('300');
  await swing.blur();
  await expect(sized).toBeVisible();
  await swing.fill('1,200');
  await swing.blur();
  await expect(page.getByText(/lies outside/)).toBeVisible();
  await expect(sized).toBeHidden();
  await expect(swing).toHaveValue('1,200');
  await page.getByLabel('inches').check();
  await expect(page.getByText('typical 9.843 in')).toBeVisible();
});

test('what is in the drawer is ticked off', async ({ page }) => {
  await page.goto('lathe/');
  const first = page.locator('.drawer input').first();
  await first.check();
  await expect.poll(() => fragment(page)).toContain('have=');
  await page.reload();
  await expect(first).toBeChecked();
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('questions, the list, the lathe page and the book read', async ({ page }) => {
    await page.goto('questions/control/');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(await page.locator('.option').count()).toBeGreaterThan(3);
    await page.getByRole('link', { name: 'Continue' }).click();
    await expect(page).toHaveURL(/\/questions\/operator-panel\//);
    await page.goto('questions/');
    await expect(page.getByRole('heading', { name: /Carriage/ })).toBeVisible();
    await page.goto('lathe/');
    await expect(page.getByLabel('Swing over the bed')).toBeVisible();
    await page.goto('book/control/');
    await expect(page.getByRole('heading', { name: 'What goes wrong' })).toBeVisible();
  });
});
