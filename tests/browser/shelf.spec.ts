import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, expectNoAxeViolations, test } from './fixtures.ts';

const paths = (page: Page) => page.locator('.shelf-path');
const called = (page: Page, name: string) => paths(page).filter({ hasText: name });

async function answerControl(page: Page, option: string): Promise<void> {
  await page.locator(`#control-${option}`).check();
  await expect(page).toHaveURL(new RegExp(`control=${option}`));
}

async function openShelf(page: Page): Promise<void> {
  await page.goto('shelf/');
  await expect(page.getByRole('heading', { name: 'Kept on this device' })).toBeVisible();
}

test('two tabs keep each their work; paths are named, deleted, put back, saved as one file and brought in elsewhere', {
  tag: '@once',
}, async ({ page, context, browser, baseURL }) => {
  // Two tabs on one path: the later one is kept beside it.
  await page.goto('questions/control/');
  await answerControl(page, 'motion-card-pc');
  const second = await context.newPage();
  await second.goto('questions/control/');
  await expect(second.locator('#control-motion-card-pc')).toBeChecked();
  await answerControl(page, 'standalone-control');
  await expect(second.getByText('Another tab has changed this path', { exact: false })).toBeVisible();
  await answerControl(second, 'thread-synchroniser');
  await expect(second.getByText('Nothing is lost', { exact: false })).toBeVisible();
  await openShelf(second);
  await expect(paths(second)).toHaveCount(2);
  await expect(called(second, '(other tab)')).toContainText('open now');

  // A name of one's own stands at the head of the plan.
  const other = called(second, '(other tab)');
  await other.getByRole('button', { name: /^Name and note/ }).click();
  await second.getByLabel('Name', { exact: true }).fill('Without a computer');
  await second.getByLabel('Note', { exact: true }).fill('Ask the club first.');
  await expectNoAxeViolations(second);
  await second.getByRole('button', { name: 'Keep', exact: true }).click();
  await called(second, 'Without a computer').getByRole('link', { name: /^Open/ }).click();
  await expect(second.getByRole('heading', { level: 1, name: 'Without a computer' })).toBeVisible();
  await second.getByLabel('Title block').getByRole('link', { name: 'Your paths' }).click();

  // Deleted and put back.
  await called(second, 'Without a computer')
    .getByRole('button', { name: /^Delete/ })
    .click();
  await expect(paths(second)).toHaveCount(1);
  await expect(second.getByRole('button', { name: 'Put it back' })).toBeFocused();
  await second.getByRole('button', { name: 'Put it back' }).click();
  await expect(called(second, 'Without a computer')).toContainText('Ask the club first.');

  // A branch is opened in the questions and says where it came from.
  await called(second, 'Without a computer')
    .getByRole('button', { name: /^Branch/ })
    .click();
  await expect(second).toHaveURL(/\/questions\/#/);
  await openShelf(second);
  await expect(called(second, 'Branched from Without a computer')).toContainText('open now');

  // All in one file, brought in elsewhere; a second time it is there already.
  const saving = second.waitForEvent('download');
  await second.getByRole('button', { name: 'Save all as one file' }).click();
  const buffer = await readFile(await (await saving).path());
  const file = { name: 'paths.json', mimeType: 'application/json', buffer };
  const elsewhere = await browser.newContext(baseURL ? { baseURL } : {});
  const fresh = await elsewhere.newPage();
  await openShelf(fresh);
  await fresh.getByLabel('Bring in a file').setInputFiles(file);
  await expect(paths(fresh)).toHaveCount(3);
  await expect(called(fresh, 'Branched from Without a computer')).toHaveCount(1);
  await expect(called(fresh, 'Ask the club first.')).toHaveCount(2);
  await fresh.getByLabel('Bring in a file').setInputFiles(file);
  await expect(fresh.getByText('there already', { exact: false })).toBeVisible();
  await expect(paths(fresh)).toHaveCount(3);
  await elsewhere.close();
});

test('a damaged text is shown and can be saved; the list does not scroll sideways at 320 pixels', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.addInitScript(() => {
    localStorage.setItem('halfnut/shelf/zz', `{"version":1,"fragment":"1?${'x'.repeat(300)}`);
    localStorage.setItem(
      'halfnut/shelf/a',
      JSON.stringify({
        version: 1,
        rev: 'a',
        fragment: '1?size=small',
        name: 'W'.repeat(80),
        note: 'x'.repeat(500),
      }),
    );
  });
  await openShelf(page);
  await expect(page.getByRole('heading', { name: 'Could not be read' })).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Save the text/ }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toMatch(/^\{"version":1,"fragment":"1\?x+$/);
  await page.getByRole('button', { name: /^Name and note/ }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await expectNoAxeViolations(page);
});

test('where the browser keeps nothing, the page says so', { tag: '@once' }, async ({ page }) => {
  await page.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await openShelf(page);
  await expect(page.getByText('keeps nothing for this site', { exact: false })).toBeVisible();
});
