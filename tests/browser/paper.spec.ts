import type { Page } from '@playwright/test';
import { nothingDone, type Progress } from '../../src/calc/core/progress.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { workingOf } from '../../src/calc/working.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { pathFile } from '../../src/export/json.ts';
import { encodePath } from '../../src/link/encode.ts';
import { expect, test } from './fixtures.ts';
import { onPaper } from './support/on-paper.ts';

const { path } = referencePaths[0]!;
const report = evaluate(path, currentEdition);
const working = workingOf(path, currentEdition);
const tasks = report.stages.flatMap((stage) => stage.tasks);

const MOST_SHEETS = {
  'Whole plan': 33,
  'Make-first list': 2,
  'Proof tests': 5,
  'Settings sheet': 5,
} as const;
type SetName = keyof typeof MOST_SHEETS;
const setNames = Object.keys(MOST_SHEETS) as SetName[];
/** Width of a sheet in CSS pixels. */
const PAPERS = { A4: 794, Letter: 816 } as const;

test.beforeEach(async ({ page }) => {
  test.setTimeout(120_000);
  await page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset.printed = 'yes';
    };
  });
});

const squeezed = (text: string): string => text.replace(/\s+/g, ' ');

async function worked(page: Page): Promise<void> {
  const long = { timeout: 60_000 };
  await expect(page.getByText('List B: proof of the finished machine')).toBeVisible(long);
  await expect(page.locator('.so-far', { hasText: '$' }).first()).toBeVisible(long);
  await expect(page.locator('.stage-rail', { hasText: '$' }).first()).toBeVisible(long);
}

async function openPlan(page: Page): Promise<void> {
  await page.goto(`plan/#${encodePath(path)}`);
  await worked(page);
}

async function choose(page: Page, set: SetName): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => delete document.documentElement.dataset.printed);
  await page.getByRole('button', { name: `Print: ${set}` }).click();
  await expect(page.locator('html[data-printed]')).toBeAttached();
}

/** Sheets of a PDF: its page objects stand uncompressed in the file. */
const sheetsOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

/** Words of whatever reaches past the right edge of the sheet, or is not black. */
const faultsOnPaper = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const edge = document.documentElement.clientWidth;
    const seen = [...document.querySelectorAll('main *')].filter(
      (each) => each.checkVisibility() && !each.closest('.visually-hidden, svg'),
    );
    const own = (each: Element): boolean =>
      [...each.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim());
    const past = seen.filter((each) => each.getBoundingClientRect().right > edge + 0.5);
    const pale = seen.filter((each) => own(each) && getComputedStyle(each).color !== 'rgb(0, 0, 0)');
    const say = (fault: string) => (each: Element) => `${fault}: ${each.textContent?.trim().slice(0, 60)}`;
    return [...past.map(say('past the edge')), ...pale.map(say('not black'))];
  });

for (const set of setNames) {
  test(`${set}: on A4 and Letter nothing is clipped or pale, with its name, link and code`, async ({
    page,
  }) => {
    await openPlan(page);
    for (const [format, width] of Object.entries(PAPERS)) {
      await choose(page, set);
      const paper = await onPaper(page);
      expect(paper.split(encodePath(path)).length).toBe(2);
      expect(paper).toContain(set === 'Whole plan' ? 'Plan sheet' : set);
      expect(paper).toContain(`dition ${report.edition.id}`);
      await page.setViewportSize({ width, height: 1000 });
      expect(await faultsOnPaper(page)).toEqual([]);
      const code = await page.locator('.paper-link .link-square').boundingBox();
      expect(code?.width).toBeGreaterThanOrEqual((25 / 25.4) * 96);
      // Making the file takes long; on Letter the longest set stands for all.
      if (format === 'Letter' && set !== 'Whole plan') continue;
      const sheets = sheetsOf(await page.pdf({ format }));
      test.info().annotations.push({ type: `${set}, ${format}`, description: `${sheets} sheets` });
      expect(sheets).toBeGreaterThan(0);
      expect(sheets).toBeLessThanOrEqual(MOST_SHEETS[set]);
    }
  });
}

test('the whole plan leaves out no task, part, risk, check, reading or setting', async ({ page }) => {
  await openPlan(page);
  const paper = await onPaper(page);
  const told = [
    ...tasks.flatMap(({ name, test: proof, safety }) => [name, proof, safety ?? '']),
    ...report.bill.once.flatMap(({ name, note }) => [name, note]),
    ...report.risks.flatMap(({ name, prevent, sign }) => [name, prevent, sign]),
    ...report.checks.map(({ label }) => label),
    ...report.settings.flatMap(({ label, how }) => [label, how]),
    ...working.readings.map(({ what }) => what),
    ...working.shelf.lines.map(({ what }) => what),
    working.stopWork?.say ?? 'a note where mains work begins',
  ];
  expect(told.filter((each) => !paper.includes(squeezed(each).trim()))).toEqual([]);
  const heads = await page.evaluate(() =>
    [...document.querySelectorAll('main thead')].map((head) => getComputedStyle(head).display),
  );
  expect(new Set(heads)).toEqual(new Set(['table-header-group']));
  const splits = await page
    .locator('.task')
    .evaluateAll((rows) => rows.map((row) => getComputedStyle(row).breakInside));
  expect(new Set(splits)).toEqual(new Set(['avoid']));
});

test('a set by itself holds its own list only, and the next print is the whole plan again', async ({
  page,
}) => {
  await openPlan(page);
  await choose(page, 'Make-first list');
  const paper = await onPaper(page);
  for (const { what } of working.shelf.lines) expect(paper).toContain(squeezed(what));
  expect(paper).toContain('This list is a gate.');
  expect(paper).not.toContain(report.bill.once[0]!.name);
  const box = await page.locator('#make-first .tick-box').first().boundingBox();
  expect(box?.width).toBeCloseTo((5 / 25.4) * 96, 0);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect(page.locator('.plan-sheet')).toHaveAttribute('data-paper', 'whole');
});

const bad = working.readings.find(({ atMost, list }) => list === 'proof' && atMost !== undefined)!;
const progress: Progress = {
  ...nothingDone,
  done: { [tasks[0]!.id]: '2027-02-01' },
  values: { [bad.id]: [bad.atMost! * 2] },
  shelf: { [working.shelf.lines[0]!.id]: ['drawing'] },
};

test('what is ticked is crossed, and a value outside its limit says where to look', async ({ page }) => {
  await page.goto(`buy-list/#${encodePath(path)}`);
  await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
  const buffer = Buffer.from(pathFile({ ...path, progress }));
  await page
    .getByLabel('Choose a file')
    .setInputFiles({ name: 'path.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Open it' }).click();
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await worked(page);
  const { points } = workingOf(path, currentEdition, progress).readings.find(({ id }) => id === bad.id)!;
  const paper = await onPaper(page);
  expect(paper).toContain('outside the limit');
  expect(paper).toContain(squeezed(points!.say));
  for (const id of points!.tasks) expect(paper).toContain(tasks.find((task) => task.id === id)!.name);
  expect(paper).toContain('Done on 2027-02-01.');
  await expect(page.locator('.task-table .tick-box.is-done')).toHaveCount(1);
  await expect(page.locator('#make-first .tick-box.is-done')).toHaveCount(1);
});
