/** So many cases, and a hundredth of them where they are run for each of many small faults (`npm run mutate`). */
export const quickly = (runs: number): number => (process.env.MUTATE ? Math.ceil(runs / 100) : runs);

/** How many random cases a slow law is tried on: `few` in every run, `many` with `LAWS_CASES=many`, as before a release. */
export const cases = (few: number, many: number): number =>
  process.env.LAWS_CASES === 'many' ? many : quickly(few);
