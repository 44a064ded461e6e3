import { defineConfig, devices } from '@playwright/test';
import { findBrowser } from './tests/browser/support/find-browser.ts';

const port = Number(process.env.HALFNUT_TEST_PORT ?? 4327);
const base = `/${process.env.HALFNUT_BASE ?? ''}/`.replace(/\/+/g, '/');
const address = `http://127.0.0.1:${port}${base}`;
const desktop = { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 900 } };
const phone = { ...devices['Pixel 7'], viewport: { width: 360, height: 740 } };

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  workers: 2,
  timeout: 60_000,
  expect: { timeout: 15_000 },
  reporter: [['list'], ['json', { outputFile: 'node_modules/.cache/results/browser.json' }]],
  use: {
    baseURL: address,
    // Each test is a first visit: keeping the whole site would be most of its work.
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: await findBrowser(),
  },
  projects: [
    // Tests at 320 pixels set that width themselves: once is enough. Newcomers come with a phone.
    { name: 'desktop', use: desktop, grepInvert: /320 (pixels|px)|@phone/ },
    // Paper, figures, files and what is tagged do not hang on the width: once is enough.
    {
      name: 'phone',
      use: phone,
      grepInvert: /@once/,
      testIgnore: ['**/paper.spec.ts', '**/kept-links.spec.ts', '**/found.spec.ts'],
    },
  ],
  webServer: {
    command: `"${process.execPath}" scripts/serve.mjs`,
    env: { PORT: String(port), HOST: '127.0.0.1' },
    url: address,
    reuseExistingServer: false,
    timeout: 30_000,
  },
});
