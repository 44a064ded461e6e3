// The main journey in a second engine: Firefox, led by WebDriver. `npm run second-engine` after a build; --fetch takes Debian's
// package where none is installed. Without a Firefox nothing is run, and it is said: a journey that was not made is not counted.
import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { firstTab, type Tab } from './bidi.ts';
import { said, start } from './browser.ts';
import { findFirefox } from './find-firefox.ts';
import { journey } from './journey.ts';

const root = join(import.meta.dirname, '..', '..');
const results = join(root, 'node_modules', '.cache', 'results');

function report(passed: number, failed: number, skipped?: string): void {
  mkdirSync(results, { recursive: true });
  writeFileSync(join(results, 'second-engine.json'), JSON.stringify({ passed, failed, skipped }));
  if (skipped) console.log(`second engine: not run, as ${skipped}`);
}

/** A browser that is there and does not start tells nothing of the site. */
async function open(origin: string): Promise<{ tab: Tab; end: () => void } | string> {
  const found = findFirefox(process.argv.includes('--fetch'));
  if (typeof found === 'string') return found;
  try {
    const { address, end } = await start(found);
    return { tab: await firstTab(address, origin), end };
  } catch (fault) {
    return `Firefox did not start (${fault instanceof Error ? fault.message : fault})`;
  }
}

async function walk(tab: Tab, home: string): Promise<void> {
  let passed = 0;
  for (const { name, run } of journey) {
    try {
      await run(tab, home);
      passed += 1;
      console.log(`  ✓ second engine: ${name}`);
    } catch (fault) {
      console.log(`  ✗ second engine: ${name}\n    ${fault instanceof Error ? fault.message : fault}`);
    }
  }
  report(passed, journey.length - passed);
  process.exitCode = passed === journey.length ? 0 : 1;
}

const port = process.env.HALFNUT_TEST_PORT ?? '4329';
const server = spawn(process.execPath, [join(root, 'scripts', 'serve.mjs')], {
  env: { ...process.env, PORT: port, HOST: '127.0.0.1' },
  stdio: 'pipe',
});
try {
  const home = await said(server, /(http:\/\/\S+\/)/, 60);
  const opened = await open(new URL(home).origin);
  if (typeof opened === 'string') report(0, 0, opened);
  else await walk(opened.tab, home).finally(opened.end);
} finally {
  server.kill();
}
// The line to the browser would keep this waiting; the exit code is set by what was found.
process.exit();
