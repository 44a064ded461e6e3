import type { Page } from '@playwright/test';
import { evaluate, type Report } from '../../src/calc/evaluate.ts';
import { currentEdition, editionByName } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { money } from '../../src/islands/shared/format.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';
import { toPaper } from './support/on-paper.ts';

const { path } = referencePaths[0]!;
const report: Report = evaluate(path, currentEdition);
const tasks = report.stages.flatMap((stage) => stage.tasks);

/** Text as a reader sees it, with runs of spaces as one. */
const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

async function openPlan(page: Page, fragment = encodePath(path)): Promise<void> {
  await page.goto(`plan/#${fragment}`);
  await expect(page.getByRole('heading', { name: 'What the figures rest on' })).toBeVisible();
}

/** What a table or a section says, also where a phone folds it. */
const said = async (page: Page, selector: string): Promise<string> =>
  squeezed((await page.locator(selector).allTextContents()).join(' '));

test('the plan of a whole link shows every task, part and risk', { tag: '@once' }, async ({ page }) => {
  await openPlan(page);
  const ways = page.getByRole('link', { name: 'The ways through' });
  await ways.focus();
  await expect(ways).toHaveAttribute('href', new RegExp(`/ways/#.*size=${path.size}`));
  const work = await said(page, '.task-table');
  for (const { name } of tasks) expect(work).toContain(squeezed(name));
  const bill = await said(page, '#parts');
  for (const { name } of report.bill.once) expect(bill).toContain(squeezed(name));
  const risks = await said(page, '#risks');
  for (const { name } of report.risks) expect(risks).toContain(squeezed(name));
  for (const { say } of report.findings.filter(({ level }) => level !== 'note'))
    expect(await said(page, '#findings')).toContain(squeezed(say));
});

test('hold points, stopping points and the link are on the sheet', async ({ page }) => {
  await openPlan(page);
  for (const { hold } of report.stages)
    if (hold) await expect(page.getByRole('heading', { name: hold.name })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'You may stop here' }).first()).toBeVisible();
  await expect(page.locator('.link-text')).toHaveText(
    new RegExp(`/plan/#${encodePath(path).slice(0, 20).replace('?', '\\?')}`),
  );
});

test('printed, the sheet carries every task, box, part and the whole link', { tag: '@once' }, async ({
  page,
}) => {
  await openPlan(page);
  await toPaper(page);
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper must not count
  const paper = squeezed(await page.locator('main').innerText());
  for (const { name, test: proof } of tasks) {
    expect(paper).toContain(squeezed(name));
    expect(paper).toContain(squeezed(proof));
  }
  for (const { name } of report.bill.once) expect(paper).toContain(squeezed(name));
  expect(paper.split(encodePath(path)).length).toBe(2);
  await expect(page.locator('.task-table .tick-box')).toHaveCount(tasks.length);
  const box = await page.locator('.task-table .tick-box').first().boundingBox();
  expect(box?.width).toBeCloseTo((5 / 25.4) * 96, 0);
});

test('with nothing answered the sheet says that it is an outline', { tag: '@once' }, async ({ page }) => {
  await page.goto('plan/');
  await expect(page.getByText('This is an outline, not yet your plan.')).toBeVisible();
});

test('what a link holds that cannot be read is said once at the top', { tag: '@once' }, async ({ page }) => {
  await openPlan(page, '1?edition=2026-11&size=medium&control=no-such-control&nonsense=1');
  await expect(page.getByText('Part of this link could not be used.')).toHaveCount(1);
});

test('a link of an older edition says what today’s prices would make of it, and takes them with a way back', async ({
  page,
}) => {
  await openPlan(page, encodePath({ ...path, edition: '2026-11' }));
  const note = page.locator('.notice', { hasText: 'price edition 2026-11' });
  const then = evaluate({ ...path, edition: '2026-11' }, editionByName('2026-11')!).money.p50;
  const now = evaluate({ ...path, edition: currentEdition.edition }, currentEdition).money.p50;
  await expect(note).toContainText(`is ${money(now)} instead of ${money(then)}.`);
  await note.getByRole('button', { name: `Use edition ${currentEdition.edition}` }).click();
  await expect(note).toBeHidden();
  await expect(page.locator('.receipt')).toContainText(/Money: .*(more|less)/);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(note).toBeVisible();
});

/** Sheets of a PDF: its page objects stand uncompressed in the file. */
const sheetsPrinted = async (page: Page): Promise<number> =>
  (await page.pdf()).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

test('on a phone a part is drawn when it is opened, and all of it on paper', { tag: '@phone' }, async ({
  page,
}) => {
  await openPlan(page);
  expect(await page.locator('.task').count()).toBe(0);
  const [first] = report.stages;
  await page
    .getByRole('button', { name: /^Show \d+ tasks?$/ })
    .first()
    .click();
  await expect(page.locator('.task')).toHaveCount(first!.tasks.length);
  await expect(page.locator('.task').last()).toBeVisible();
  // The first print finds everything drawn: a browser does not wait for it.
  const printed = await sheetsPrinted(page);
  expect(printed).toBeGreaterThan(20);
  expect(await sheetsPrinted(page)).toBe(printed);
  await toPaper(page);
  await expect(page.locator('.task')).toHaveCount(tasks.length);
  const bill = await said(page, '#parts');
  for (const { name } of report.bill.once) expect(bill).toContain(squeezed(name));
});

test.describe('a missing page', () => {
  test.use({ allowedProblems: [/404/] });
  test('is answered in words', async ({ page }) => {
    for (const address of ['no-such-page/', 'no-such-page']) {
      await page.goto(address);
      await expect(page.getByRole('heading', { name: 'There is no page at this address' })).toBeVisible();
    }
    await page.goto('safety');
    await expect(page.getByRole('heading', { level: 1, name: 'Safety' })).toBeVisible();
  });
});

test.describe('without a connection for the sums', () => {
  test.use({ allowedProblems: [/ERR_FAILED/] });
  test('the page says so, keeps the link and has the figures after loading again', { tag: '@once' }, async ({
    page,
  }) => {
    await page.route('**/_astro/sums.*.js', (route) => route.abort());
    await page.goto(`plan/#${encodePath(path)}`);
    const notice = page.getByRole('alert').filter({ hasText: 'A part of this site could not be fetched.' });
    await expect(notice.getByLabel('Your link')).toHaveValue(/control=/);
    await page.unroute('**/_astro/sums.*.js');
    await notice.getByRole('button', { name: 'Load the page again' }).click();
    await expect(page.getByRole('heading', { name: 'Money, everything in' })).toBeVisible();
  });
});
