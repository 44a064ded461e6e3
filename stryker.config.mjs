// Small faults put into the sums one at a time: the tests must notice. Started by `npm run mutate`, one topic at a time.
const topics = {
  formulas: ['src/calc/formulas/*.ts'],
  checks: ['src/calc/subsystems/*/checks*.ts', 'src/calc/core/check.ts', 'src/calc/core/steps.ts'],
};
const topic = process.env.MUTATE ?? 'formulas';
const cache = `node_modules/.cache/mutation/${topic}`;

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  mutate: topics[topic],
  // Labels, remedies and equations are words; a test that repeats them says nothing.
  mutator: { excludedMutations: ['StringLiteral'] },
  // What is set when a file is read are tables and words; each fault there would need the whole site read anew.
  ignoreStatic: true,
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutate.config.ts' },
  coverageAnalysis: 'perTest',
  concurrency: 2,
  timeoutMS: 10_000,
  incremental: true,
  incrementalFile: `${cache}.json`,
  reporters: ['clear-text', 'html'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: `${cache}.html` },
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', 'coverage', '.astro', 'public'],
  thresholds: { high: 95, low: 85, break: 85 },
};
