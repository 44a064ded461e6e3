import { expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { correctionBridges } from '../../src/content/bridge.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';

// `npm run bridge` renews the figures when a reference path has moved on purpose.
test.each(referencePaths.map(({ id, path }) => [id, path] as const))(
  '%s: the bridge ends at today’s middle',
  (id, path) => {
    const bridge = correctionBridges.find((each) => each.path === id);
    expect(bridge?.steps.parts).toBe(Math.round(evaluate(path, currentEdition).money.p50));
  },
);
