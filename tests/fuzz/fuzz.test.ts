// A few cases of each law in every run; `npm run fuzz -- 10` tries new ones for ten minutes.
import fc from 'fast-check';
import { test } from 'vitest';
import { laws } from './laws.ts';
import { storeLaws } from './store.ts';

test.each([...laws, ...storeLaws])('$name holds against any text', async ({ property }) => {
  await fc.assert(property as fc.IAsyncProperty<unknown>, { numRuns: 60 });
});
