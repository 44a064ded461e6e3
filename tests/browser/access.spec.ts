import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { axeViolations, expect, expectNoAxeViolations, test } from './fixtures.ts';
import { states } from './support/states.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const pages = globSync('**/*.html', { cwd: dist }).toSorted();
const SHARES = 4;

/** What reaches beyond the right edge, outermost first; parts that may scroll by themselves are left out. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    return [...document.querySelectorAll('body *')]
      .filter(
        (part) => part.getBoundingClientRect().right > clientWidth + 0.5 && !part.closest('.table-wide'),
      )
      .slice(0, 6)
      .map((part) => `${part.tagName} ${part.className} ${part.textContent?.slice(0, 30)}`);
  });

/** The spacing that a reader may ask for (WCAG 2.2, 1.4.12). */
const spaceOut = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
      p { margin-block-end: 2em !important; }`);
    document.adoptedStyleSheets = [sheet];
  });

/** Each button and field as it is heard: the group or table it stands in, its kind and its name. */
function controlsHeard(tree: string): string[] {
  const groups: Array<{ depth: number; name: string }> = [];
  return tree.split('\n').flatMap((line) => {
    const found = /^(\s*)- '?(\w+)(?: "(.*?)")?/.exec(line);
    if (!found) return [];
    const [, space = '', role = '', name = ''] = found;
    while ((groups.at(-1)?.depth ?? -1) >= space.length) groups.pop();
    if (/^(group|region|table)$/.test(role)) groups.push({ depth: space.length, name });
    const isControl = /^(button|textbox|searchbox|checkbox|combobox|slider)$/.test(role);
    return isControl ? [[...groups.map((group) => group.name), role, name].join(' / ')] : [];
  });
}

/** What is heard twice, so that a reader who goes from field to field cannot tell which of the two it is. */
async function calledAlike(page: Page): Promise<string[]> {
  const heard = controlsHeard(await page.getByRole('main').ariaSnapshot());
  return [...new Set(heard.filter((each, at) => heard.indexOf(each) !== at))];
}

for (const { name, place, reach } of states) {
  test(`${name}: read by everyone`, async ({ page, isMobile }) => {
    test.setTimeout(120_000);
    // The narrowest page is a page of 1,280 pixels at four times its size (WCAG 2.2, 1.4.10).
    if (isMobile) await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(place);
    await reach?.(page);
    expect(await tooWide(page)).toEqual([]);
    await expectNoAxeViolations(page);
    if (isMobile) {
      await spaceOut(page);
      expect(await tooWide(page)).toEqual([]);
      return;
    }
    expect(await calledAlike(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    await expectNoAxeViolations(page, { rules: ['color-contrast'] });
  });
}

test('what is heard at a question: one group of answers, where they lead, the figures, the rooms @once', async ({
  page,
}) => {
  await page.goto('questions/hand-use/#1?edition=2026-12&hand-use=fully-reversible&size=medium');
  const main = page.getByRole('main');
  await expect(main).toMatchAriaSnapshot(`
    - article:
      - heading "How much turning by hand must survive?" [level=1]
      - group "How much turning by hand must survive? Choose one":
        - 'radio "None: jog with buttons"'
        - radio "Electronic handwheels that drive the motors"
        - radio "Hand cranks on the motor shafts, drives off"
        - radio "Everything bolts off again, nothing cut"
        - radio "Not sure yet"
      - navigation "Questions before and after":
        - link "Back"
        - link "Read about it in the book"
        - link "Continue"
    - complementary "Running card"
    - navigation "Rooms"
  `);
  await expect(main.getByRole('region', { name: 'Your path', exact: true })).toMatchAriaSnapshot(`
    - textbox "my limit , money, everything in $"
    - paragraph:
      - 'button "Why this much? , why: Money, everything in"'
  `);
});

/** A page as it stands in the built site, without its scripts: it needs no waiting. */
async function showAsBuilt(page: Page, file: string): Promise<void> {
  const body = readFileSync(join(dist, file), 'utf8').replace(/<script\b[\s\S]*?<\/script>/g, '');
  await page.unroute('**/as-built/');
  await page.route('**/as-built/', (route) => route.fulfill({ body, contentType: 'text/html' }));
  await page.goto('as-built/');
  await page.evaluate(() => {
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });
}

// Colours are left to tests/look/contrast.test.ts: looking at them again on every page takes longer than all the rest.
for (let share = 0; share < SHARES; share += 1) {
  test(`every page as it was built is read by everyone and fits the narrowest screen: part ${share + 1} of ${SHARES} @once`, async ({
    page,
  }) => {
    test.setTimeout(240_000);
    expect(pages.length).toBeGreaterThan(120);
    await page.setViewportSize({ width: 320, height: 640 });
    const faults: unknown[] = [];
    for (const file of pages.filter((_, at) => at % SHARES === share)) {
      await showAsBuilt(page, file);
      const found = [
        ...(await tooWide(page)),
        ...(await axeViolations(page, { without: ['color-contrast'] })),
      ];
      if (found.length > 0) faults.push({ file, found });
    }
    expect(faults).toEqual([]);
  });
}
