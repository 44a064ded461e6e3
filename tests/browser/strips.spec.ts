import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const strip = (page: Page, name: string) =>
  page.getByRole('table', { name: new RegExp(`: ${name}, compared`) });
const row = (page: Page, name: string, of: string) =>
  strip(page, name).getByRole('row', { name: new RegExp(`^${of}`) });
const option = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });

const KEEP = 'Keep the motor and belts it has';
const DRIVE = 'Three-phase motor on a speed drive';

test('an owner reads what each motor would do, takes one, and finds what it moved', async ({ page }) => {
  await page.goto('questions/spindle-motor/');
  await expect(row(page, KEEP, 'money')).toContainText(/ less, typically /);
  for (const of of ['money', 'hours', 'risks', 'checks']) {
    await expect(row(page, DRIVE, of)).toContainText('no change');
    await expect(row(page, KEEP, of)).not.toContainText('no change');
  }
  await expect(option(page, KEEP)).toHaveAccessibleDescription(/Money: .* less.*hours: .*risks? down/);
  await expect(option(page, DRIVE)).toHaveAccessibleDescription(/The plan as it is\./);
  await expect(page.locator('.option').filter({ has: option(page, KEEP) })).toContainText('Also sets');

  await option(page, KEEP).check();
  await expect(row(page, KEEP, 'money')).toContainText('no change');
  await expect(option(page, KEEP)).toHaveAccessibleDescription(/The plan as it is\./);
  await expect(row(page, DRIVE, 'money')).toContainText(' more');
  const receipt = page.getByRole('status').filter({ hasText: 'Money' });
  await expect(receipt).toContainText(/Money: .* less.*Hours: .* less.*Risks: .* of 20.*Checks: /);

  await option(page, DRIVE).check();
  await page.getByText('2 changes in words').click();
  const history = page.locator('.history li');
  await expect(history).toHaveCount(2);
  await expect(history.nth(1)).toContainText(/Money: .* less/);
  await expect(history.nth(1).getByRole('link')).toHaveAttribute('href', /\/questions\/spindle-motor\//);
  await history.first().getByRole('button', { name: /^Undo/ }).click();
  await expect(option(page, KEEP)).toBeChecked();
  await expect(page.getByText('1 change in words')).toBeVisible();
});

test('where several may be ticked the strip says what a tick does', async ({ page }) => {
  await page.goto('questions/purpose/#1?edition=2026-12&purpose=thread-cutting&size=medium');
  await expect(page.getByRole('table', { name: /^Ticking it: / }).first()).toBeVisible();
});

/** Both ends of "Half of the ways this could turn out cost $7,200–9,900." */
async function half(page: Page): Promise<[number, number]> {
  const said = ((await page.locator('.rule-page p b').filter({ hasText: '–' }).textContent()) ?? '').replace(
    /[$,]/g,
    '',
  );
  const [low = '', high = ''] = said.split('–');
  return [Number(low), Number(high)];
}

test('nine questions narrow the range, and the sheet names what keeps it wide', async ({ page }) => {
  await page.goto('');
  await page.getByRole('link', { name: 'Quick sheet' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Quick sheet' })).toBeVisible();
  const open = page.locator('.quick-open li');
  await expect(open).toHaveCount(6);
  await expect(page.locator('.quick-question input:checked')).toHaveCount(0);
  expect(await page.locator('.quick-question').count()).toBe(
    await page.locator('.quick-question').getByText('Not sure yet').count(),
  );
  const [low, high] = await half(page);
  const widest = (await open.first().getByRole('link').textContent()) ?? '';

  const take = (question: string, answer: string) =>
    page.getByRole('group', { name: question }).getByLabel(answer, { exact: true }).check();
  await take('What holds the work?', 'The chuck it has, jaws by key');
  await take('What kind of control?', 'Ready-made lathe control with its own panel');
  await take('Which movements get a motor?', 'Carriage and cross slide');
  await take('What turns the spindle?', DRIVE);
  await take('What condition is the lathe in?', 'Not sure yet');
  await expect(open.filter({ hasText: widest })).toHaveCount(0);
  await expect.poll(async () => (([from, to]) => to - from)(await half(page))).toBeLessThan(high - low);

  const first = open.first().getByRole('link');
  const asked = (await first.textContent()) ?? '';
  await first.click();
  await expect(page.getByRole('heading', { name: asked })).toBeVisible();
});
