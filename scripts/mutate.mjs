// Mutation testing by topic: `npm run mutate` for all, `npm run mutate -- checks` for one. More options go to the tool
// itself: `npm run mutate -- formulas --mutate src/calc/formulas/belt.ts`. Whole, `sums` takes hours: `SAMPLE=12 npm run mutate
// -- sums` tries twelve files, evenly spread.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { argv, env, execPath, exit } from 'node:process';

const all = ['formulas', 'checks', 'link', 'sums'];
const [first, ...rest] = argv.slice(2);
const named = all.includes(first);
const options = named ? rest : argv.slice(2);
const tool = join(
  dirname(createRequire(import.meta.url).resolve('@stryker-mutator/core/package.json')),
  'bin/stryker.js',
);

const codes = (named ? [first] : all).map((topic) => {
  const run = spawnSync(execPath, [tool, 'run', ...options], {
    stdio: 'inherit',
    // All the sums would take hours.
    env: { ...(topic === 'sums' && !named ? { SAMPLE: '12' } : {}), ...env, MUTATE: topic },
  });
  return run.status ?? 1;
});
exit(Math.max(...codes));
