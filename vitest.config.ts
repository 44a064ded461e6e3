import { defineConfig } from 'vitest/config';

/** Laws are tried on hundreds of random paths; a busy machine takes its time, and how long is no part of a test. */
const testTimeout = 300_000;
const setupFiles = ['tests/laws.ts'];
/** Tests that put other modules in the place of ours, so that each needs modules of its own. */
const apart = ['tests/link/renamed.test.ts'];
const jsx = { runtime: 'automatic', importSource: 'preact' } as const;

export default defineConfig({
  test: {
    // Two cores carry two workers; the runner would leave one of them idle.
    maxWorkers: '100%',
    reporters: ['default', 'json'],
    outputFile: { json: 'node_modules/.cache/results/unit.json' },
    coverage: {
      provider: 'v8',
      include: ['src/calc/**/*.ts', 'src/link/**/*.ts'],
      reporter: ['text-summary', 'html', 'json-summary'],
    },
    projects: [
      {
        test: {
          name: 'logic',
          // The trade is read once a worker, not once a file: nothing in these tests changes it.
          isolate: false,
          testTimeout,
          setupFiles,
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/islands/**', ...apart],
        },
      },
      { test: { name: 'apart', testTimeout, setupFiles, environment: 'node', include: apart } },
      {
        oxc: { jsx },
        test: {
          name: 'islands',
          testTimeout,
          setupFiles,
          environment: 'happy-dom',
          include: ['tests/islands/**/*.test.{ts,tsx}'],
        },
      },
    ],
  },
});
