import type { Page } from '@playwright/test';

/** Shows the page as paper has it, with everything that a screen draws or unfolds later. */
export async function toPaper(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
}

/** What a reader finds on the paper; what is hidden there does not count. */
export async function onPaper(page: Page): Promise<string> {
  await toPaper(page);
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden on paper must not count
  return (await page.locator('main').innerText()).replace(/\s+/g, ' ');
}
