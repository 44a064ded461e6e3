import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

interface Focused {
  readonly name: string;
  /** What is wrong with how the focus is shown; empty when it is as it should be. */
  readonly fault: string;
}

/** Where the focus is, and whether it can be seen: in view, ringed, and under nothing (WCAG 2.2, 2.4.7 and 2.4.11). */
const focused = (page: Page): Promise<Focused> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLElement | null;
    if (!at || at === document.body) return { name: '', fault: '' };
    const label = (at as HTMLInputElement).labels?.[0]?.textContent;
    const name = (at.getAttribute('aria-label') ?? label ?? at.textContent ?? '').replace(/\s+/g, ' ').trim();
    const { left, top, right, bottom } = at.getBoundingClientRect();
    const [x, y] = [(left + right) / 2, (top + bottom) / 2];
    const inView = bottom > 0 && top < innerHeight && right > 0 && left < innerWidth;
    const over = inView ? document.elementFromPoint(x, Math.min(Math.max(y, 0), innerHeight - 1)) : null;
    const hidden = over && !at.contains(over) && !over.contains(at) && !over.closest('label')?.contains(at);
    const ringed = [at, at.closest('label')].some(
      (each) => each && getComputedStyle(each).outlineStyle !== 'none',
    );
    const fault = [
      inView ? '' : 'out of view',
      hidden ? `under ${over.tagName}.${over.className}` : '',
      ringed ? '' : 'no ring',
    ].filter(Boolean);
    return { name, fault: fault.join(', ') };
  });

/** Skips what stands at the head of every page. */
async function skip(page: Page): Promise<void> {
  await goTo(page, /^Skip to the main part$/);
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
}

/** Presses a key until the focus stands on what is named; every stop on the way must be seen. */
async function goTo(page: Page, name: RegExp, key = 'Tab'): Promise<void> {
  let last = '';
  for (let presses = 0; presses < 120; presses += 1) {
    await page.keyboard.press(key);
    const at = await focused(page);
    expect(at.fault, `focus on “${at.name}” after “${last}”`).toBe('');
    if (name.test(at.name)) return;
    last = at.name;
  }
  throw new Error(`${name} is not reached with ${key}; the last stop was “${last}”`);
}

test('from home to a printed plan without a pointer', { tag: '@once' }, async ({ page }) => {
  test.setTimeout(120_000);
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', 'yes');
  });
  await page.goto('');
  await skip(page);
  await goTo(page, /^Start with your lathe$/);
  await page.keyboard.press('Enter');

  await expect(page.getByText(/ways this could turn out cost/)).toBeVisible();
  await skip(page);
  await goTo(page, /^Swing over the bed$/);
  await page.keyboard.type('230');
  await page.keyboard.press('Tab');
  await expect(page).toHaveURL(/swing=230/);

  await page.goto('questions/control/');
  await expect(page.getByText(/ways this could turn out cost/)).toBeVisible();
  await skip(page);
  await goTo(page, /^PC that does the timing/);
  await page.keyboard.press('ArrowDown');
  await expect(page).toHaveURL(/control=/);
  // What the other answers would do is drawn anew, which moves what stands below.
  await expect(page.getByText('What just moved')).toBeVisible();
  await expect(page.locator('.option:has(input:checked)')).toContainText('The plan as it is.');
  await expect(page.locator('.option-effect.is-old')).toHaveCount(0);
  await goTo(page, /^Continue$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
  await expect(page).not.toHaveURL(/\/control\//);

  await goTo(page, /^Plan$/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'What the figures rest on' })).toBeVisible();
  await goTo(page, /^Print: ?Whole plan$/);
  await page.keyboard.press('Enter');
  await expect(page.locator('html')).toHaveAttribute('data-printed', 'yes');
});

test('nothing that stays in place lies over the focus, 320 pixels', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 480 });
  await page.goto('questions/spindle-motor/');
  await expect(page.locator('.bottom-bar')).toBeVisible();
  await goTo(page, /^Report a wrong number$/);

  await page.goto('buy-list/');
  await page
    .getByRole('button', { name: /^Show \d+ lines?$/ })
    .first()
    .click();
  await page
    .getByRole('button', { name: /^I have it/ })
    .first()
    .click();
  await expect(page.locator('.receipt')).toBeVisible();
  for (let stops = 0; stops < 30; stops += 1) await goTo(page, /./);
  for (let stops = 0; stops < 30; stops += 1) await goTo(page, /./, 'Shift+Tab');
});
