import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { calendarOf } from '../../src/calc/working.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { stripOf } from '../../src/export/strip.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const START = '2027-01-04';
const calendar = calendarOf(path, currentEdition, { start: START });

/** Text as a reader sees it, with runs of spaces as one. */
const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

async function openCalendar(page: Page): Promise<void> {
  await page.goto(`calendar/#${encodePath(path)}`);
  await expect(page.getByRole('heading', { name: 'Strip of weeks' })).toBeVisible();
  await expect(page.getByRole('table', { name: 'Stopping points' })).toBeVisible();
}

async function giveFirstDay(page: Page): Promise<void> {
  await page.getByLabel('First day of the work').fill(START);
  await expect(page.locator('#weeks')).toContainText(calendar.stages[0]!.days!.to);
}

const opened = (page: Page, summary: string | RegExp) =>
  page.locator('summary', { hasText: summary }).click();

/** Lines of an iCalendar file with folded ones joined again: RFC 5545, 3.1. */
const contentLines = (file: string): string[] => file.replaceAll('\r\n ', '').split('\r\n');

test('the strip, its words and every task with what it waits for are on the page', async ({ page }) => {
  await openCalendar(page);
  await opened(page, 'The strip in words');
  for (const line of stripOf(calendar).words)
    await expect(page.locator('.strip-said')).toContainText(squeezed(line));
  const tables = squeezed((await page.locator('.waits-table').allTextContents()).join(' '));
  for (const { name } of calendar.tasks) expect(tables).toContain(squeezed(name));
  const { critical } = calendar.tasks[0]!;
  expect(critical).toBe(true);
  await opened(page, /^Decide/);
  await expect(page.getByRole('table', { name: 'What waits for what: Decide' })).toContainText(
    'longest chain',
  );
});

test('with a first day weeks become dates, and the calendar file holds every stage and order-by day', {
  tag: '@once',
}, async ({ page }) => {
  await openCalendar(page);
  await expect(page.getByText('A calendar file needs a day to start on')).toBeVisible();
  await page.getByRole('button', { name: 'Save as a calendar file' }).click();
  await expect(page.getByLabel('First day of the work')).toBeFocused();
  await giveFirstDay(page);
  await expect(page.locator('#deliveries')).toContainText(calendar.deliveries[0]!.days!.orderBy);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a calendar file' }).click();
  const saved = await saving;
  expect(saved.suggestedFilename()).toBe(`calendar-${START}.ics`);
  const lines = contentLines(await readFile(await saved.path(), 'utf8'));
  expect(lines[0]).toBe('BEGIN:VCALENDAR');
  const starts = lines.filter((line) => line.startsWith('DTSTART'));
  const days = [
    ...calendar.stages.map(({ days }) => days!.from),
    ...calendar.deliveries.map(({ days }) => days!.orderBy),
  ];
  expect(starts).toEqual(days.map((day) => `DTSTART;VALUE=DATE:${day.replaceAll('-', '')}`));
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('A calendar file needs a day to start on')).toBeVisible();
});

test('the lines of the stages add up to their total to the cent', { tag: '@once' }, async ({ page }) => {
  await openCalendar(page);
  const cells = await page.locator('.money-stages tbody td:last-child').allTextContents();
  const cents = cells.map((text) => Math.round(Number(text.replace(/[$,]/g, '')) * 100));
  const total = cents.pop();
  expect(cents.reduce((sum, each) => sum + each, 0)).toBe(total);
  expect(total).toBeGreaterThan(0);
});

test('where no worker can be had the page works the calendar out itself', { tag: '@once' }, async ({
  page,
}) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(globalThis, 'Worker');
  });
  await openCalendar(page);
});

test('the plan leads here, and on paper every stage and task is said', { tag: '@once' }, async ({ page }) => {
  await page.goto(`plan/#${encodePath(path)}`);
  await page.getByRole('link', { name: 'the calendar' }).click();
  await expect(page.getByRole('table', { name: 'Stopping points' })).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper must not count
  const paper = squeezed(await page.locator('main').innerText());
  for (const { name } of calendar.stages) expect(paper).toContain(squeezed(name));
  for (const { name } of calendar.tasks) expect(paper).toContain(squeezed(name));
  for (const { name } of calendar.deliveries) expect(paper).toContain(squeezed(name));
});
