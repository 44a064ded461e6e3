// What a path says of a figure: only what lies within its limits, and nothing of another kind of motor.
import { afterEach, describe, expect, test, vi } from 'vitest';
import { designFigures } from '../../../src/calc/why-number.ts';
import { batch } from '../../../src/calc/working-figures/batch.ts';
import { play } from '../../../src/calc/working-figures/play.ts';
import { supply } from '../../../src/calc/working-figures/supply.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import type { Own } from '../../../src/export/own.ts';
import { ownText } from '../../../src/islands/kept-lines.ts';
import { keep } from '../../../src/islands/memory.ts';
import { putRecord } from '../../../src/islands/shelf/records.ts';
import { ownValues } from '../../../src/islands/working/own-values.ts';
import { encodePath } from '../../../src/link/encode.ts';

// The worker is asked for nothing else.
vi.mock('../../../src/islands/ask/ask.ts', () => ({
  ask: async (_: 'design', ...[path, ids]: Parameters<typeof designFigures>) => designFigures(path, ids),
}));

const { path } = referencePaths.find(({ id }) => id === 'reference')!;
/** Opens a path in the address, and keeps it with what only its owner knows. */
const keepOwn = (own: Own): void => {
  const fragment = encodePath(path);
  putRecord('a', { fragment, rev: '1' });
  keep('own/a', ownText(own));
  window.location.hash = `#${fragment}`;
};
const open = (changed: Partial<typeof path>) => {
  window.location.hash = `#${encodePath({ ...path, ...changed })}`;
};

afterEach(() => {
  window.location.hash = '';
  window.localStorage.clear();
});

test('without a path there is nothing of its own', async () => {
  expect(await ownValues(play)).toBeUndefined();
});

describe('play', () => {
  test('a play that was measured as a whole stands in the first, with nothing beside it', async () => {
    open({ facts: { 'cross-play': 0.0002 } });
    expect(await ownValues(play)).toEqual({ nut: 0.0002, bearing: 0 });
  });

  test('one that the figure does not reach is left out', async () => {
    open({ facts: { 'cross-play': 0.0015 } });
    expect(await ownValues(play)).toEqual({ bearing: 0 });
  });
});

test('batch: the first kind of part, in seconds', async () => {
  const family = {
    name: 'knobs',
    piecesPerBatch: 40,
    batchesPerYear: 6,
    byHand: { setUp: 0.5, piece: 0.25 },
    byProgram: { firstSetUp: 2.5, setUp: 0.5, attended: 0.1 },
  };
  keepOwn({ families: [family] });
  expect(await ownValues(batch)).toEqual({ pieces: 40, program: 7200, byHand: 900, attended: 360 });
});

describe('supply', () => {
  test('takes motor, screw and volts of the carriage', async () => {
    open({});
    const own = await ownValues(supply);
    expect(Object.keys(own!).toSorted()).toEqual(supply.inputs.map(({ id }) => id).toSorted());
  });

  test('takes nothing from a path of servos, whose torque is no holding torque', async () => {
    const servos = referencePaths.find((each) => each.path.answers['axis-motor']?.includes('mains-servo'))!;
    window.location.hash = `#${encodePath(servos.path)}`;
    expect(await ownValues(supply)).toBeUndefined();
  });
});
