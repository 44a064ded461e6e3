import { defineConfig } from 'vitest/config';

/** The tests of each topic that `npm run mutate` knows: quick ones, so that a few thousand faults can be tried. */
const tests: Record<string, string[]> = {
  formulas: ['tests/published/*.test.ts', 'tests/calc/formulas/*.test.ts'],
  checks: ['tests/calc/design/checks/*.test.ts', 'tests/calc/core/*.test.ts'],
  link: ['tests/link/*.test.ts', 'tests/links/*.test.ts'],
  sums: ['tests/calc/{core,cost,schedule,worth}/*.test.ts', 'tests/calc/*.test.ts'],
};

export default defineConfig({
  test: { environment: 'node', include: tests[process.env.MUTATE ?? 'formulas'] },
});
