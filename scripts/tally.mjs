// Prints "N passed, N failed" for unit, browser and second-engine tests together, as its last line.
// Argument: the exit code of the test run. Exits non-zero unless everything passed.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const results = join(import.meta.dirname, '..', 'node_modules', '.cache', 'results');

/** One runner's report as { passed, failed }; a report that is missing counts as one failure. */
function read(file, count) {
  const path = join(results, file);
  if (existsSync(path)) return count(JSON.parse(readFileSync(path, 'utf8')));
  console.log(`${file}: these tests did not run`);
  return { passed: 0, failed: 1 };
}

const unit = read('unit.json', (r) => ({
  passed: r.numPassedTests,
  failed:
    r.numFailedTests +
    r.testResults.filter((f) => f.status === 'failed' && !f.assertionResults.length).length,
}));
const browser = read('browser.json', (r) => ({
  passed: r.stats.expected,
  failed: r.stats.unexpected + r.stats.flaky + r.errors.length,
}));

// Only where it was run and found its browser is there anything to count.
const second = existsSync(join(results, 'second-engine.json'))
  ? read('second-engine.json', ({ passed, failed }) => ({ passed, failed }))
  : { passed: 0, failed: 0 };

const exitCode = Number(process.argv[2] ?? 0);
const passed = unit.passed + browser.passed + second.passed;
const counted = unit.failed + browser.failed + second.failed;
// A step that failed without a failed test (types, lint, build) is still a failure.
const failed = counted === 0 && (exitCode !== 0 || passed === 0) ? 1 : counted;
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : exitCode || 1;
