// Tries the laws of tests/fuzz on new random texts for so many minutes and counts: `npm run fuzz -- 10`. A fault is printed
// with its smallest text and its seed, and the exit code is 1.
import fc from 'fast-check';
import { laws } from '../tests/fuzz/laws.ts';
import { storeLaws } from '../tests/fuzz/store.ts';

const minutes = Number(process.argv[2] ?? 1);
const until = Date.now() + minutes * 60_000;
const AT_ONCE = 200;
const all = [...laws, ...storeLaws];
const tried = new Map(all.map(({ name }) => [name, 0]));
const faults = new Map<string, string>();

for (let round = 0; Date.now() < until; round += 1) {
  const { name, property } = all[round % all.length]!;
  if (faults.has(name)) continue;
  const seed = Math.floor(Math.random() * 2 ** 31);
  const run = await fc.check(property as fc.IAsyncProperty<unknown>, { seed, numRuns: AT_ONCE });
  tried.set(name, tried.get(name)! + run.numRuns);
  if (run.failed) {
    const said = run.errorInstance instanceof Error ? run.errorInstance.message : 'no reason given';
    faults.set(
      name,
      `seed ${seed}\n  ${JSON.stringify(run.counterexample).slice(0, 1500)}\n  ${said.slice(0, 800)}`,
    );
  }
  if (faults.size === all.length) break;
}

for (const [name, count] of tried) console.log(`${String(count).padStart(9)}  ${name}`);
for (const [name, fault] of faults) console.log(`\nFault in ${name}, ${fault}`);
console.log(`\n${[...tried.values()].reduce((sum, count) => sum + count, 0)} texts, ${faults.size} faults`);
process.exitCode = faults.size > 0 ? 1 : 0;
