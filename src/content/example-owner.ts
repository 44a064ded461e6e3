import type { Path } from '../calc/core/path.ts';
import { pathOf, referencePaths } from './reference-paths.ts';
import { usuallyOwned } from './usually-owned.ts';

/** An owner made up for the home page, with two answers to the same wish. */
export const exampleOwner = {
  story:
    'A 250 mm lathe, the only one. Thirty brass parts a month, metric threads now and then. A tool post and the everyday tools are in the drawer. Six hours a week.',
} as const;

const mine = { facts: { swing: 0.25, 'hours-per-week': 6 }, owned: usuallyOwned } satisfies Partial<Path>;

/** Both slides driven by program. */
export const fullConversion: Path = pathOf(
  { purpose: ['repeat-batches', 'thread-cutting'], 'order-of-work': 'in-stages' },
  'medium',
  mine,
);

const threads = referencePaths.find(({ id }) => id === 'thread-synchroniser-with-cross-feed');

/** Motors on lead screw and cross slide, handwheels kept, no programs. */
export const threadDrive: Path = {
  ...(threads?.path ?? pathOf({ control: 'thread-synchroniser' })),
  ...mine,
};
