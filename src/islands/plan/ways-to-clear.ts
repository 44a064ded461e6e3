import type { Path } from '../../calc/core/path.ts';
import { type WayToClear, waysToClear } from '../../calc/evaluate.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** The ways to clear a check at the prices that the path names; an edition that we do not have gives today's. */
export const waysFor = (path: Path, check: string): WayToClear[] =>
  waysToClear(path, editionByName(path.edition) ?? currentEdition, check);
