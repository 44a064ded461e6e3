// Every printed time of two networks. Source beside the networks.
import { describe, expect, test } from 'vitest';
import { criticalPath } from '../../src/calc/formulas/critical-path.ts';
import { activitiesOf, nameOf, sevenArrows, thirteenArrows, WEEK } from './networks.ts';

describe.each([
  ['seven arrows', sevenArrows],
  ['thirteen arrows', thirteenArrows],
])('%s', (_, network) => {
  test.each(network.map((arrow) => [nameOf(arrow), arrow] as const))('%s', (id, { times }) => {
    const plan = criticalPath.compute({ activities: activitiesOf(network) });
    const found = plan.activities.find((activity) => activity.id === id)!;
    const { earlyStart, earlyFinish, lateStart, lateFinish, float } = found;
    const ours = [earlyStart, earlyFinish, lateStart, lateFinish, float].map((seconds) => seconds / WEEK);
    expect(ours).toEqual(times);
  });
});
