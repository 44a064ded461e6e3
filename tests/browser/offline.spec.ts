import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { hashOf } from '../../src/offline/list.ts';
import { test as base, expect } from './fixtures.ts';
import { type PlainServer, plainServer } from './support/plain-server.ts';

const test = base.extend<{ server: PlainServer }>({
  // biome-ignore lint/correctness/noEmptyPattern: the runner asks for a pattern
  server: async ({}, use) => {
    const server = await plainServer();
    await use(server);
    await server.close();
  },
  baseURL: async ({ server }, use) => use(server.address),
});

test.use({ serviceWorkers: 'allow', allowedProblems: [/ERR_(CONNECTION|EMPTY_RESPONSE|FAILED)/] });

const fragment = encodePath({ ...referencePaths[0]!.path, edition: currentEdition.edition });
const kept = (page: Page) => page.getByRole('contentinfo').getByText(/^Kept for the workshop/);

/** Puts up a newer copy of one page, as a new build would. */
function putUpNewer(server: PlainServer, address: string, change: (html: string) => string): void {
  const dist = join(import.meta.dirname, '..', '..', 'dist');
  const html = change(readFileSync(join(dist, address, 'index.html'), 'utf8'));
  const worker = readFileSync(join(dist, 'at-hand.js'), 'utf8');
  const hash = new RegExp(`"${address}":"[0-9a-f]{16}"`);
  expect(worker).toMatch(hash);
  server.instead.set(address, html);
  server.instead.set(
    'at-hand.js',
    worker.replace(hash, `"${address}":"${hashOf(new TextEncoder().encode(html))}"`),
  );
}

test('after one visit the site opens without a connection, and a newer copy waits until it is wanted @once', async ({
  page,
  context,
  server,
}) => {
  test.setTimeout(180_000);
  await page.goto(`safety/#${fragment}`);
  await expect(kept(page)).toBeVisible({ timeout: 60_000 });

  server.isReachable = false;
  await page.getByRole('link', { name: 'Bench' }).click();
  await expect(page.getByRole('region', { name: 'Next' })).toBeVisible({ timeout: 40_000 });
  await page.reload();
  await expect(page.getByRole('region', { name: 'Next' })).toBeVisible({ timeout: 40_000 });
  await page.goto(`trust?place=main#${fragment}`);
  await expect(page).toHaveURL(/trust\/\?place=main#/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.goto('never-was/');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This page is not on this device');

  server.isReachable = true;
  await page.goto(`lathe/#${fragment}`);
  const other = await context.newPage();
  await other.goto('book/find/');
  await other.getByRole('searchbox').fill('half nut');
  putUpNewer(server, 'safety/', (html) => html.replace('</h1>', ' (newer)</h1>'));
  server.sent.length = 0;
  await page.reload();
  const now = page.getByRole('button', { name: 'Use it now' });
  await expect(now).toBeVisible({ timeout: 40_000 });
  expect(server.sent.filter((address) => address !== 'at-hand.js')).toEqual(['safety/']);
  const before = await context.newPage();
  await before.goto('safety/');
  await expect(before.getByRole('heading', { level: 1 })).not.toContainText('newer');
  await before.close();

  await now.click();
  await expect(other.getByText('in use from the next page that you open')).toBeVisible();
  await expect(other.getByRole('searchbox')).toHaveValue('half nut');
  await expect(now).toBeHidden();
  expect(page.url()).toContain(fragment);
  await page.goto('safety/');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('newer');

  await page.getByRole('contentinfo').getByRole('button', { name: 'Drop it' }).click();
  await expect(
    page.getByRole('contentinfo').getByRole('button', { name: 'Keep it for the workshop' }),
  ).toBeVisible();
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
});
