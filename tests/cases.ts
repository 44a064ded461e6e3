/** How many random cases a slow law is tried on: `few` in every run, `many` with `LAWS_CASES=many`, as before a release. */
export const cases = (few: number, many: number): number => (process.env.LAWS_CASES === 'many' ? many : few);
