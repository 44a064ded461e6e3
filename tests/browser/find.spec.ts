import { expect, expectNoAxeViolations, test } from './fixtures.ts';

test('a word is found in the book, the address can be sent, and a lost connection loses nothing typed @once', async ({
  page,
}) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto('book/find/');
  await page.waitForFunction(() => document.querySelector('astro-island:not([ssr])'));
  const words = page.getByRole('searchbox', { name: 'Words to find' });
  expect(asked.filter((path) => path.endsWith('find.json'))).toEqual([]);

  await page.route('**/book/find.json', (route) => route.fulfill({ status: 200, body: 'cut off' }));
  await words.fill('backlash');
  await words.press('Enter');
  await expect(page.getByRole('status')).toContainText('could not be fetched');
  await expect(words).toHaveValue('backlash');

  await page.unroute('**/book/find.json');
  await words.press('Enter');
  await expect(page.getByRole('status')).toContainText('for “backlash”');
  await expect(page.getByRole('main').getByRole('listitem').first().getByRole('link')).toContainText('play');
  await expectNoAxeViolations(page);

  expect(new URL(page.url()).search).toBe('?q=backlash');
  await page.goto('book/find/?q=zzqqxx');
  await expect(page.getByRole('status')).toContainText('Nothing in the book');
  await expect(words).toHaveValue('zzqqxx');
  await expect(page.getByRole('link', { name: 'contents of the book' })).toBeVisible();
});
