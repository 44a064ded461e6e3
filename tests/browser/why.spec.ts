import type { Page } from '@playwright/test';
import { evaluate } from '../../src/calc/evaluate.ts';
import { formulas } from '../../src/calc/formulas/registry.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { rows } from '../published/rows.ts';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';

const { path } = referencePaths[0]!;
const fragment = encodePath(path);
const { checks } = evaluate(path, currentEdition);
/** A check that a formula stands behind and that is followed down to an answer. */
const cord = checks.find(({ id }) => id === 'mains-cord')!;

async function openPlan(page: Page): Promise<void> {
  await page.goto(`plan/#${fragment}`);
  await expect(page.getByRole('heading', { name: 'What the figures rest on' })).toBeVisible();
}

const unfoldChecks = async (page: Page): Promise<void> => {
  const shut = page.locator('#checks').getByRole('button', { name: /^Show \d/ });
  for (let left = await shut.count(); left > 0; left -= 1) await shut.first().click();
};

test('a figure of the plan is explained by keyboard, and the focus comes back', { tag: '@once' }, async ({
  page,
  isMobile,
}) => {
  await openPlan(page);
  if (isMobile) await unfoldChecks(page);
  const figure = page.locator('#checks').getByRole('button', { name: `why: ${cord.label}` });
  await figure.focus();
  await page.keyboard.press('Enter');
  const sheet = page.getByRole('dialog', { name: `Why: ${cord.label}` });
  await expect(sheet.locator('math').first()).toBeVisible();
  await expect(sheet.getByText(/^Source: /).first()).toBeVisible();
  await expectNoAxeViolations(page);
  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
  await expect(figure).toBeFocused();
});

test('equations and sums of explanations are loaded only when somebody asks', { tag: '@once' }, async ({
  page,
}) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await openPlan(page);
  expect(asked.filter((url) => url.endsWith('equations.json'))).toEqual([]);
  await page.locator('#rods').getByRole('button').first().click();
  await expect(page.getByText(/Half of the 2,000 builds cost less/)).toBeVisible();
  expect(asked.filter((url) => url.endsWith('equations.json'))).toHaveLength(1);
});

test('an open explanation is what is printed', { tag: '@once' }, async ({ page }) => {
  await openPlan(page);
  await page.locator('#rods').getByRole('button').first().click();
  await expect(page.getByText(/Half of the 2,000 builds cost less/)).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(/Half of the 2,000 builds cost less/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Parts list' })).toBeHidden();
});

test('a number has a page of its own that leads down to the question', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.goto(`why/?of=check.supply-current.value#${fragment}`);
  await expect(page.locator('math').first()).toBeVisible();
  await expect(page).toHaveTitle(/^Why: /);
  await page
    .getByRole('link', { name: /^(Change|Answer): / })
    .first()
    .click();
  await expect(page).toHaveURL(/\/(questions\/[a-z-]+|lathe)\/.*#1/);
});

test('the deepest explanation does not scroll sideways at 320 pixels', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.goto(`why/?of=check.spindle-cut-torque.value#${fragment}`);
  await expect(page.locator('math').first()).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});

test('an address that names no number says so', { tag: '@once' }, async ({ page }) => {
  await page.goto('why/?of=check.no-such-check.value');
  await expect(page.getByText(/does not arise on this path/)).toBeVisible();
  await page.goto('why/');
  await expect(page.getByText(/This address names no number/)).toBeVisible();
});

test('every formula stands on a page with its checks, without JavaScript', { tag: '@once' }, async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    viewport: { width: 360, height: 740 },
  });
  const page = await context.newPage();
  await page.goto(`${baseURL}formulas/`);
  await expect(page.locator('.formula')).toHaveCount(formulas.length);
  await expect(page.locator('.formula tbody tr')).toHaveCount(rows.length);
  await context.close();
});

test('a link to a figure of the lathe opens its group and goes to its field', { tag: '@once' }, async ({
  page,
}) => {
  await page.goto(`lathe/?at=cross-friction-force#${fragment}`);
  const field = page.getByLabel('Force to slide the cross slide');
  await expect(field).toBeFocused();
  await field.fill('25 lbf');
  await field.blur();
  await expect(page).toHaveURL(/cross-friction-force=/);
  await expect(page.locator('#figures-own').getByText(/1 given by you/)).toBeVisible();
});
