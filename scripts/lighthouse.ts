// Lighthouse on the built site as a phone sees it: `npm run lighthouse`, after a build. It is fetched at the first run, at an
// exact version, into a folder that git does not know: it is large, and no part of `npm ci`. Prints the four scores of the
// pages that matter most (of those named behind --, of all without) and ends with 1 where one is under 100, naming what was
// found. Performance swings with whatever else the machine does: as Lighthouse's own guide has it, the middle of five runs counts.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';
import { findBrowser } from '../tests/browser/support/find-browser.ts';
import { KINDS, type Kind } from './page-kinds.ts';
import { servePacked } from './serve-packed.ts';

const VERSION = '13.5.0';
const RUNS = 5;
const PAGES: readonly Kind[] = ['home', 'question', 'plan', 'compare', 'book, a room', 'topic with figures'];
const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

interface Audit {
  readonly title: string;
  readonly score: number | null;
  readonly displayValue?: string;
}

interface Report {
  readonly audits: Readonly<Record<string, Audit>>;
  readonly categories: Readonly<
    Record<string, { score: number | null; auditRefs: readonly { id: string; weight: number }[] }>
  >;
}

type Lighthouse = (
  address: string,
  flags: { port: number; logLevel: string; onlyCategories: readonly string[] },
) => Promise<{ lhr: Report } | undefined>;

/** Lighthouse from the cache; it is fetched where it is not there yet. */
async function lighthouse(): Promise<Lighthouse> {
  const folder = join(import.meta.dirname, '..', 'node_modules', '.cache', 'lighthouse');
  const entrance = join(folder, 'node_modules', 'lighthouse', 'core', 'index.js');
  if (!existsSync(entrance)) {
    console.log(`Fetching Lighthouse ${VERSION} (about 180 MB, once) …`);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
    execFileSync('npm', ['install', '--save-exact', '--no-audit', '--no-fund', `lighthouse@${VERSION}`], {
      cwd: folder,
      stdio: 'inherit',
      shell: process.platform === 'win32',
    });
  }
  const { default: run } = await import(pathToFileURL(entrance).href);
  return run;
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const address = server.address();
  await new Promise((closed) => server.close(closed));
  return typeof address === 'object' && address ? address.port : 0;
}

/** What took something off a score, worst first. */
function faultsOf({ audits, categories }: Report, category: string): string[] {
  const weighed = (categories[category]?.auditRefs ?? []).filter(({ weight }) => weight > 0);
  return weighed.flatMap(({ id }) => {
    const { title, score, displayValue = '' } = audits[id]!;
    return score === null || score >= 0.995 ? [] : [`   ${id} ${score}: ${title} ${displayValue}`];
  });
}

const scoreOf = ({ categories }: Report, category: string): number =>
  Math.round((categories[category]?.score ?? 0) * 100);

/** The run in the middle by performance, and how far the runs lie apart. */
async function seen(page: string): Promise<{ middle: Report; range: string }> {
  const runs: Report[] = [];
  while (runs.length < RUNS) {
    const found = await run(page, { port, logLevel: 'error', onlyCategories: CATEGORIES });
    if (!found) throw new Error(`Lighthouse said nothing of ${page}`);
    runs.push(found.lhr);
  }
  const sorted = runs.toSorted((a, b) => scoreOf(a, 'performance') - scoreOf(b, 'performance'));
  const [least, most] = [sorted.at(0)!, sorted.at(-1)!].map((each) => scoreOf(each, 'performance'));
  return { middle: sorted[RUNS >> 1]!, range: `${least}–${most}` };
}

const cells = (...texts: string[]) =>
  texts.map((text, at) => (at ? text.padStart(16) : text.padEnd(24))).join('');

const wanted = process.argv.slice(2);
const run = await lighthouse();
const port = await freePort();
const options = await findBrowser();
const browser = await chromium.launch({
  ...options,
  args: [...(options.args ?? []), `--remote-debugging-port=${port}`],
});
const { address, close } = await servePacked();
let failed = false;

console.log(cells('Lighthouse, phone', ...CATEGORIES, `of ${RUNS} runs`));
for (const kind of PAGES.filter((page) => wanted.length === 0 || wanted.includes(page))) {
  const { middle, range } = await seen(address + KINDS[kind]);
  const scores = CATEGORIES.map((name) => scoreOf(middle, name));
  console.log(cells(kind, ...scores.map(String), range));
  for (const [at, name] of CATEGORIES.entries())
    if (scores[at]! < 100) console.log(faultsOf(middle, name).join('\n'));
  failed ||= scores.some((score) => score < 100);
}

await browser.close();
close();
process.exitCode = failed ? 1 : 0;
