import { defineConfig } from 'vitest/config';

const jsx = { runtime: 'automatic', importSource: 'preact' } as const;

export default defineConfig({
  test: {
    // Laws are tried on hundreds of random paths; a busy machine takes its time.
    testTimeout: 60_000,
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
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/islands/**'],
        },
      },
      {
        oxc: { jsx },
        test: {
          name: 'islands',
          environment: 'happy-dom',
          include: ['tests/islands/**/*.test.{ts,tsx}'],
        },
      },
    ],
  },
});
