import type { Page } from '@playwright/test';
import { currentEdition } from '../../../src/content/edition.ts';
import { choosingOwners } from '../../../src/content/owners-choosing.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { encodePath } from '../../../src/link/encode.ts';
import { expect } from '../fixtures.ts';

/** A page in a state that a visitor meets, and the way into it. */
export interface State {
  readonly name: string;
  readonly place: string;
  /** Run when the page has loaded: waits until it says something, then opens and types. */
  readonly reach?: (page: Page) => Promise<void>;
}

const WHOLE = encodePath({ ...referencePaths[0]!.path, edition: currentEdition.edition });
const OWNER = encodePath({
  ...choosingOwners.find(({ id }) => id === 'handles-on-the-only-lathe')!.path,
  edition: currentEdition.edition,
});

/** Sums are worked out on the way: the busiest pages may take their time on a slow machine. */
const slow = { timeout: 40_000 };

const seen = (page: Page, text: string | RegExp) => expect(page.getByText(text).first()).toBeVisible(slow);
const headed = (page: Page, name: string | RegExp) =>
  expect(page.getByRole('heading', { name }).first()).toBeVisible(slow);

/** Opens everything that is folded. */
async function unfold(page: Page): Promise<void> {
  const shut = page.getByRole('button', { name: /^Show \d/ });
  for (let left = await shut.count(); left > 0; left -= 1)
    if (await shut.first().isVisible()) await shut.first().click();
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });
}

async function type(page: Page, label: string | RegExp, text: string): Promise<void> {
  const field = page.getByLabel(label).first();
  await field.fill(text);
  await field.blur();
}

/** Every room with sums of its own, empty, full, and with something that cannot be taken. */
export const states: readonly State[] = [
  {
    name: 'home, a link that is none',
    place: '',
    reach: async (page) => {
      await page.getByText('Open a saved link').first().click();
      await page.getByLabel('Open a saved link').fill('https://example.org/somewhere');
      await page.getByRole('button', { name: 'Open' }).click();
      await seen(page, 'This is no link to a path.');
    },
  },
  {
    name: 'a question answered, more open, of a link that was damaged',
    place: 'questions/control/#1?control=motion-card-pc&colour=blue&edition=2026-12&size=medium',
    reach: async (page) => {
      await expect(page.getByRole('table', { name: /compared with the plan/ }).first()).toBeVisible(slow);
      await page.locator('#control-standalone-control').check();
      await seen(page, 'What just moved');
      await unfold(page);
    },
  },
  {
    name: 'a question with blocked answers, to decide again',
    place: 'questions/motor-supply/#1?drives=multi-axis-board&edition=2026-12&motor-supply=mains-direct',
    reach: (page) => seen(page, 'Please decide again.'),
  },
  {
    name: 'a question that is not asked',
    place: 'questions/cross-screw/#1?driven-axes=carriage-only&edition=2026-12&size=medium',
    reach: (page) => seen(page, 'This question is not asked on your path.'),
  },
  {
    name: 'the list of questions',
    place: `questions/#${OWNER}`,
    reach: (page) => headed(page, 'Check your answers'),
  },
  {
    name: 'the lathe, with a figure that cannot be',
    place: 'lathe/',
    reach: async (page) => {
      await seen(page, /ways this could turn out cost/);
      await type(page, 'Swing over the bed', '1,200');
      await seen(page, /lies outside/);
      await unfold(page);
    },
  },
  {
    name: 'the quick sheet',
    place: 'quick/',
    reach: (page) => expect(page.locator('.quick-open li').first()).toBeVisible(slow),
  },
  {
    name: 'a whole plan, unfolded',
    place: `plan/#${WHOLE}`,
    reach: async (page) => {
      await headed(page, 'What the figures rest on');
      await unfold(page);
    },
  },
  {
    name: 'an outline of a plan',
    place: 'plan/',
    reach: async (page) => {
      await headed(page, 'What the figures rest on');
      await seen(page, 'This is an outline, not yet your plan.');
    },
  },
  {
    name: 'the calendar, unfolded',
    place: 'calendar/',
    reach: async (page) => {
      await expect(page.getByRole('table', { name: 'Stopping points' })).toBeVisible(slow);
      await unfold(page);
    },
  },
  {
    name: 'the bench with a task open and a reading that is no number',
    place: `bench/#${WHOLE}`,
    reach: async (page) => {
      await expect(page.getByRole('region', { name: 'Next' })).toBeVisible(slow);
      await page.getByRole('button', { name: /^More/ }).first().click();
      await type(page, 'Hours spent so far', 'some');
    },
  },
  {
    name: 'the buy list with a form open and a price that is none',
    place: `buy-list/#${WHOLE}`,
    reach: async (page) => {
      await headed(page, 'What to buy');
      await unfold(page);
      await page
        .getByRole('button', { name: /^Add a price/ })
        .first()
        .click();
      await page.getByLabel('Your price, before carriage and tax').fill('dear');
      await page.getByRole('button', { name: 'Keep', exact: true }).click();
    },
  },
  {
    name: 'the comparison',
    place: `compare/#${OWNER}`,
    reach: async (page) => {
      await headed(page, /side by side/);
      await expect(page.locator('[aria-busy="true"]')).toHaveCount(0, slow);
      await unfold(page);
    },
  },
  {
    name: 'worth it, with parts that are made again and again',
    place: `worth-it/#${OWNER}`,
    reach: async (page) => {
      await headed(page, 'Parts you make again and again');
      await expect(page.getByRole('region', { name: 'Choices you can still make' })).toBeVisible(slow);
      await page.getByRole('button', { name: 'Add a family of parts' }).click();
      await unfold(page);
    },
  },
  {
    name: 'the ways through, with a limit that cannot be read',
    place: 'ways/#1?control=motion-card-pc&edition=2026-12&size=medium',
    reach: async (page) => {
      await seen(page, /ways fit the rules\./);
      await type(page, /my limit, money/, 'lots');
      await seen(page, 'We cannot find a number in this.');
    },
  },
  {
    name: 'why a number is what it is',
    place: `why/?of=check.supply-current.value#${WHOLE}`,
    reach: (page) => expect(page.locator('math').first()).toBeVisible(slow),
  },
  {
    name: 'a topic of the book with figures to move',
    place: `book/topics/ball-screws/#${WHOLE}`,
    reach: async (page) => {
      await page.locator('#figure-whip').scrollIntoViewIfNeeded();
      await seen(page, 'from your path');
    },
  },
];
