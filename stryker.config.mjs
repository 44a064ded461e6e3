// Small faults put into the sums one at a time: the tests must notice. Started by `npm run mutate`, one topic at a time.
import { globSync } from 'node:fs';

const topics = {
  formulas: ['src/calc/formulas/*.ts'],
  checks: ['src/calc/subsystems/*/checks*.ts', 'src/calc/core/check.ts', 'src/calc/core/steps.ts'],
  link: ['src/link/!(known).ts'],
  sums: ['src/calc/{choices,cost,schedule,worth}/**/*.ts', 'src/calc/*.ts'],
};
/** Evenly spread over the files of a topic: `SAMPLE=12` tries twelve of them. */
function sampled(files) {
  const count = Number(process.env.SAMPLE ?? 0);
  const all = files.flatMap((pattern) => globSync(pattern)).toSorted();
  if (!count || count >= all.length) return files;
  return Array.from({ length: count }, (_, at) => all[Math.floor(((at + 0.5) * all.length) / count)]);
}

const topic = process.env.MUTATE ?? 'formulas';
const cache = `node_modules/.cache/mutation/${topic}`;

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  mutate: sampled(topics[topic]),
  // Labels, remedies and equations are words; a test that repeats them says nothing.
  mutator: { excludedMutations: ['StringLiteral'] },
  // What is set when a file is read are tables and words; each fault there would need the whole site read anew.
  ignoreStatic: true,
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutate.config.ts' },
  coverageAnalysis: 'perTest',
  concurrency: 2,
  timeoutMS: 10_000,
  dryRunTimeoutMinutes: 20,
  incremental: true,
  incrementalFile: `${cache}.json`,
  reporters: ['clear-text', 'html'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: `${cache}.html` },
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', 'coverage', '.astro', 'public'],
  thresholds: { high: 95, low: 85, break: 85 },
};
