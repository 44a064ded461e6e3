// People who come with a question and leave with something to take away. Newcomers hold a phone, old hands sit at a desk.
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { toBuy } from '../../src/calc/buying.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { calendarOf } from '../../src/calc/working.ts';
import { figureWords } from '../../src/components/starting/figures.ts';
import { ownerById, startingPoint } from '../../src/components/starting/points.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';
import { onPaper } from './support/on-paper.ts';

// They cross several heavy pages each: time enough on a machine that does much else.
test.describe.configure({ timeout: 120_000 });

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const report = evaluate(path, currentEdition);
/** A check that a formula with a source stands behind. */
const cord = report.checks.find(({ id }) => id === 'mains-cord')!;
const tasks = report.stages.flatMap((stage) => stage.tasks);

/** A place in the strip at the head of every page. */
const strip = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name, exact: true });
const planDrawn = (page: Page) =>
  expect(page.getByRole('heading', { name: 'What the figures rest on' })).toBeVisible();

async function type(page: Page, label: string | RegExp, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.blur();
}

async function saved(page: Page, button: string): Promise<string> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return readFile(await (await saving).path(), 'utf8');
}

test.describe('a newcomer', { tag: '@phone' }, () => {
  test('I want to know whether my lathe is worth it before I spend a penny', async ({ page }) => {
    await page.goto('');
    await page.getByRole('link', { name: 'Quick sheet' }).first().click();
    await page.getByLabel('Small batches of the same part').check();
    await page.getByLabel('The only lathe I have').check();
    await expect(page.getByRole('heading', { name: 'Why the answer is this wide' })).toBeVisible();
    await page.getByRole('main').getByRole('link', { name: 'Is it worth it', exact: true }).click();
    await page.getByRole('button', { name: 'Add a family of parts' }).click();
    await type(page, 'Name of these parts', 'Knobs');
    await type(page, 'Batches a year', '24');
    await type(page, 'Price outside, for one', '4.50');
    await expect(page.getByText('Outside work avoided: about $3,200 a year')).toBeVisible({
      timeout: 40_000,
    });
    const verdict = page.getByRole('region', { name: 'Verdict' });
    await expect(verdict).toContainText(
      /half of the ways it takes \$[\d,]+ to \$[\d,]+ and \d+ to \d+ hours/,
    );
    await expect(verdict).toContainText(/It saves about \d+ hours a year/);
    await expect(page.getByRole('table', { name: 'Years until it has paid for itself' })).toBeVisible();
  });

  test('I only want to cut threads: do I need all this?', async ({ page }) => {
    await page.goto('questions/purpose/');
    await page.getByLabel('Threads of any pitch').check();
    await expect(page.getByRole('status').getByText(/Money: .*Hours: /)).toBeVisible();
    await strip(page, 'Plan').click();
    await planDrawn(page);
    const verdict = page.getByRole('region', { name: 'Verdict' });
    await expect(verdict).toContainText('For threads a full conversion is more than you need');
    await verdict.getByRole('link', { name: 'Control', exact: true }).click();
    await page.locator('#control-thread-synchroniser').check();
    await expect(page.getByRole('status').getByText(/Money: .* less/)).toBeVisible();
    await strip(page, 'Plan').click();
    await planDrawn(page);
    await expect(verdict).toContainText('fits');
    await expect(verdict.getByRole('link', { name: 'Control', exact: true })).toHaveCount(0);
    await page.getByRole('button', { name: 'Send this path' }).first().click();
    await expect(page.getByRole('textbox', { name: 'The link' })).toHaveValue(
      /\/plan\/#1\?control=thread-synchroniser&.*purpose=thread-cutting/,
    );
  });

  test('I found somebody like me and want that plan as my own', async ({ page }) => {
    const point = startingPoint(ownerById('learning-on-a-spare'));
    const said = figureWords(point.report);
    await page.goto('');
    await page.getByRole('link', { name: 'Starting points' }).first().click();
    await page
      .getByRole('article')
      .filter({ hasText: point.owner.name })
      .getByRole('link', { name: point.owner.name })
      .click();
    await page.getByRole('link', { name: 'Open the plan' }).click();
    await planDrawn(page);
    const rods = page.locator('#rods');
    for (const figure of [said.money, said.hours, said.weeks]) await expect(rods).toContainText(figure);
    await page.getByRole('link', { name: 'Your paths' }).first().click();
    await page.getByRole('button', { name: 'Keep it among my paths' }).click();
    const kept = page.locator('.shelf-path');
    await kept.getByRole('button', { name: /^Name and note/ }).click();
    await page.getByLabel('Name', { exact: true }).fill('My spare lathe');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await page.goto('shelf/');
    await kept.filter({ hasText: 'My spare lathe' }).getByRole('link', { name: /^Open/ }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'My spare lathe' })).toBeVisible();
    await expect(rods).toContainText(said.money);
  });

  test('I have so much money and so many evenings: what can I have for it?', async ({ page }) => {
    await page.goto(
      'questions/#1?edition=2026-12&purpose=repeat-batches&size=medium&which-lathe=spare-lathe',
    );
    await page.getByRole('link', { name: /the ways through/ }).click();
    await type(page, /my limit, money/, '6k');
    await type(page, /my limit, hours/, '250');
    await expect(page.getByText(/ways fit the rules\./)).toBeVisible();
    await page.getByRole('button', { name: 'Find the ways through' }).click();
    const first = page.locator('#way-1');
    await expect(first).toContainText('No way inside your limits takes less money', { timeout: 45_000 });
    await first.getByRole('button', { name: /Open this way/ }).click();
    await expect(first).toContainText('This is your plan now.');
    await strip(page, 'Buy list').click();
    await page.getByRole('button', { name: 'That is all I have of these' }).click();
    expect(await saved(page, 'Buy list as CSV')).toContain('id,');
  });

  test('I have a free Saturday and want to know what to do first', async ({ page }) => {
    const [first, second] = tasks;
    await page.goto(`plan/#${encodePath(path)}`);
    await strip(page, 'Bench').click();
    const next = page.getByRole('region', { name: 'Next' });
    await expect(next.getByRole('heading')).toHaveText(first!.name);
    await type(page, 'Hours spent so far', '2.5');
    // Not check(): the box of the next task stands in its place at once.
    await next.getByRole('checkbox', { name: /^Done/ }).click();
    await expect(next.getByRole('heading')).toHaveText(second!.name);
    await page.reload();
    await expect(next.getByRole('heading')).toHaveText(second!.name);
    await expect(page.locator('.lede')).toContainText('2.5 h written down');
    expect(page.url()).not.toContain('done');
    await page.getByRole('link', { name: 'The whole plan, and paper to hang by the lathe' }).click();
    await planDrawn(page);
    await page.getByRole('button', { name: /^Show \d+ tasks, 1 of them done/ }).click();
    await expect(page.locator('.task-table .tick-box.is-done')).toBeVisible();
    expect(await onPaper(page)).toContain(first!.name);
    await page.emulateMedia({ media: 'screen' });
  });
});

test.describe('an old hand', { tag: '@once' }, () => {
  test('I was sent a link and want the settings for the screw that I bought, on paper', async ({ page }) => {
    await page.addInitScript(() => {
      window.print = () => document.documentElement.setAttribute('data-printed', 'yes');
    });
    await page.goto('');
    await page.getByText('Open a saved link').first().click();
    await page.getByLabel('Open a saved link').fill('https://example.org/somewhere');
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await expect(page.getByText('This is no link to a path.')).toBeVisible();
    await page.getByLabel('Open a saved link').fill(`https://example.org/plan/#${encodePath(path)}`);
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await planDrawn(page);

    // Two motor turns of 200 steps in eighths on a screw of 5 mm: 640 pulses a millimetre; on one of 10 mm: 320.
    const pulses = page
      .locator('#settings')
      .getByRole('row', { name: /^Pulses for each length/ })
      .first();
    await expect(pulses).toContainText('640');
    await page
      .locator('#settings')
      .getByRole('button', { name: /why: Travel for one screw turn/ })
      .first()
      .click();
    await page
      .getByRole('dialog')
      .getByRole('link', { name: /^Give your own figure/ })
      .click();
    const lead = page.locator(':focus');
    await lead.fill('10 mm');
    await lead.blur();
    await expect(page).toHaveURL(/carriage-lead=10/);
    await strip(page, 'Plan').click();
    await planDrawn(page);
    await expect(pulses).toContainText('320');
    await page.getByRole('button', { name: 'Print: Settings sheet' }).click();
    await expect(page.locator('html[data-printed]')).toBeAttached();
    const paper = await onPaper(page);
    expect(paper).toContain('320');
    for (const { label } of report.settings) expect(paper).toContain(label);
    expect(paper).not.toContain(report.bill.once[0]!.name);
  });

  test('I do not believe a figure: show me the sum, its source and where to object', async ({ page }) => {
    await page.goto(`plan/#${encodePath(path)}`);
    await planDrawn(page);
    await page
      .locator('#checks')
      .getByRole('button', { name: `why: ${cord.label}` })
      .click();
    const sheet = page.getByRole('dialog');
    await expect(sheet.locator('math').first()).toBeVisible();
    await sheet.getByRole('link', { name: 'On a page of its own, every step unfolded' }).click();
    await expect(page).toHaveTitle(/^Why: /);
    await page.getByRole('link', { name: 'Its valid range and published checks' }).first().click();
    await expect(page.locator('.formula:target')).toContainText('Source');
    await page.goBack();
    await page.getByRole('link', { name: 'Report a wrong number' }).click();
    await expect(page.getByLabel('Text to copy')).toHaveValue(
      new RegExp(`Link to my path: .*#${encodePath(path).slice(0, 40).replace('?', '\\?')}`),
    );
  });

  test('I have quotes in my own money and want to order in time', async ({ page }) => {
    const { part, name } = calendarOf(path, currentEdition, {}).deliveries.find((each) =>
      toBuy(report).some(({ part: id, qty, pack }) => id === each.part && qty === 1 && pack === 1),
    )!;
    const sum = (row: string) => page.locator('.sum-row', { hasText: row }).locator('dd');
    await page.goto(`buy-list/#${encodePath(path)}`);
    await page.getByRole('button', { name: 'That is all I have of these' }).click();
    await type(page, 'Your currency', 'EUR');
    await type(page, 'One US dollar buys', '0.9');
    await expect(page.locator('#money, main').first()).toContainText('€');
    await page.getByLabel('Choose a file').setInputFiles({
      name: 'quotes.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`id,unit price,note\r\n${part},77.50,with nut\r\n`),
    });
    await page.getByRole('button', { name: 'Take 1 price' }).click();
    await expect(sum('Quoted')).toHaveText('$86.11 (€77.50)');
    await strip(page, 'Plan').click();
    await page.getByRole('link', { name: 'the calendar' }).click();
    await page.getByLabel('First day of the work').fill('2027-01-04');
    await page.locator('#deliveries').getByRole('link', { name }).click();
    const line = page.locator(`#line-${part}`);
    await expect(line).toBeFocused();
    await line.getByRole('button', { name: /^Ordered/ }).click();
    await expect(sum('Committed')).toHaveText('$86.11 (€77.50)');
    await page.reload();
    await expect(sum('Committed')).toHaveText('$86.11 (€77.50)');
    await line.getByRole('button', { name: /^Arrived/ }).click();
    await expect(page.getByRole('heading', { name: 'Arrived: check it now' })).toBeVisible();
    expect((await saved(page, 'Buy list as a spreadsheet')).slice(0, 2)).toBe('PK');
  });
});
