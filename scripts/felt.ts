// What a visitor feels of the built site, measured in a browser: `npm run felt`. What each page sends for (kB with brotli,
// requests), how far it moves while it loads (layout shift, at both widths), and how long an answer takes to be on screen
// with the processor slowed four times. Ends with 1 where a page shifts by 0.01 or an answer takes 50 ms.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page, type Request } from '@playwright/test';
import { currentName } from '../src/link/known.ts';
import { findBrowser } from '../tests/browser/support/find-browser.ts';
import { type Shift, type Wait, watchPresses, watchShifts } from './felt-watch.ts';
import { KINDS } from './page-kinds.ts';
import { servePacked } from './serve-packed.ts';

const WIDTHS = [360, 1280];
const SHIFT = 0.01;
/** A press answered later than this is felt, ms. */
const SLOW = 50;

const links = readFileSync(join(import.meta.dirname, '../tests/links/v1.txt'), 'utf8')
  .trim()
  .split('\n');
/** A path with every question answered, from the kept links: at the prices of its time, and at those of today. */
const oldPath = links.find((line) => line.length > 1000 && !line.includes(';')) ?? '';
const fullPath = oldPath.replace(/edition=[^&]+/, `edition=${currentName}`);

async function settled(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(800);
}

/** Opens the path and keeps it, as somebody does who has answered a question. */
async function keepPath(page: Page, site: string): Promise<void> {
  await page.goto(`${site}questions/control/#${fullPath}`);
  await page.getByRole('button', { name: 'Keep it among my paths' }).click();
  await settled(page);
  await page.goto('about:blank');
}

/**
 * How a page is come to: by nobody who has been here before, by a link that somebody sent, by one of older prices, and
 * from another page of the site, when the device already keeps the path.
 */
const COMINGS = { bare: '', link: `#${fullPath}`, old: `#${oldPath}`, again: `#${fullPath}` };
type Coming = keyof typeof COMINGS;

async function load(browser: Browser, site: string, place: string, width: number, coming: Coming) {
  const address = `${site}${place}${COMINGS[coming]}`;
  const context = await browser.newContext({
    viewport: { width, height: 800 },
    isMobile: width < 500,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.addInitScript(watchShifts);
  if (coming === 'again') await keepPath(page, site);
  const done: Request[] = [];
  page.on('requestfinished', (request) => done.push(request));
  await page.goto(address);
  await settled(page);
  if (await page.locator('.notice.stop[role=alert]').count())
    throw new Error(`${address} met a mistake of ours`);
  const shifts = (await page.evaluate('window.shifts')) as Shift[];
  const sent = { kB: { document: 0, stylesheet: 0, script: 0 }, requests: done.length };
  for (const request of done) {
    const kind = request.resourceType();
    if (kind in sent.kB)
      sent.kB[kind as keyof typeof sent.kB] += (await request.sizes()).responseBodySize / 1000;
  }
  await context.close();
  return { sent, shifts };
}

const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;

interface Pressed {
  readonly page: string;
  /** What is pressed, one after another. */
  readonly at: string;
  /** How often at most. */
  readonly times: number;
}

const PRESSED: Readonly<Record<string, Pressed>> = {
  'answers of a question': { page: 'questions/control/', at: '.centre input[type=radio]', times: 8 },
  'folds of the plan': { page: `plan/#${fullPath}`, at: '.fold-button', times: 4 },
  'ticks of the buy list': { page: `buy-list/#${fullPath}`, at: '.buy-list input[type=checkbox]', times: 6 },
};

/** Milliseconds from each press to the next picture, with the processor slowed four times. */
async function press(browser: Browser, address: string, { page: name, at, times }: Pressed) {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    isMobile: true,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.addInitScript(watchPresses);
  await page.goto(`${address}${name}`);
  await settled(page);
  const cdp = await context.newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const places = await page.locator(at).all();
  for (const place of places.slice(0, times)) {
    if (await place.isDisabled()) continue;
    await place.scrollIntoViewIfNeeded();
    await page.waitForTimeout(300);
    const box = await place.boundingBox();
    if (box) await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await page.waitForTimeout(2500);
  }
  const presses = await page.evaluate('window.presses()');
  await context.close();
  return presses as Wait[];
}

const cells = (...texts: string[]) =>
  texts.map((text, at) => (at ? text.padStart(12) : text.padEnd(24))).join('');

const wanted = process.argv.slice(2);
const { address, close } = await servePacked();
const browser = await chromium.launch(await findBrowser());
let failed = false;

console.log(cells('kB sent, brotli', 'come to', 'HTML', 'CSS', 'JavaScript', 'requests', 'width', 'shift'));
for (const [kind, place] of Object.entries(KINDS)) {
  if (wanted.length > 0 && !wanted.includes(kind)) continue;
  for (const coming of Object.keys(COMINGS) as Coming[])
    for (const width of WIDTHS) {
      const { sent, shifts } = await load(browser, address, place, width, coming);
      const shift = shifts.reduce((sum, { value }) => sum + value, 0);
      const { document, stylesheet, script } = sent.kB;
      const kB = [document, stylesheet, script].map((each) => each.toFixed(1));
      console.log(cells(kind, coming, ...kB, String(sent.requests), String(width), shift.toFixed(3)));
      for (const { value, what } of shifts) if (value >= 0.002) console.log(`   ${value.toFixed(3)} ${what}`);
      failed ||= shift >= SHIFT;
    }
}

console.log(
  `\n${cells('ms to the next picture', 'presses', 'median', 'longest')}  (processor slowed four times)`,
);
for (const [what, pressed] of Object.entries(PRESSED)) {
  if (wanted.length > 0 && !wanted.includes('presses')) continue;
  const waits = await press(browser, address, pressed);
  const times = waits.map(({ picture }) => picture);
  console.log(cells(what, String(times.length), String(median(times)), String(Math.max(...times))));
  for (const { picture, before, ours } of waits.filter((wait) => wait.picture >= SLOW))
    console.log(`   ${picture}: ${before.toFixed(0)} before our code, ${ours.toFixed(0)} in it`);
  failed ||= times.length === 0 || Math.max(...times) >= SLOW;
}

await browser.close();
close();
process.exitCode = failed ? 1 : 0;
