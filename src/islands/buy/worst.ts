import type { Path } from '../../calc/core/path.ts';
import { type WorstBuild, worstBuilds } from '../../calc/worst-builds.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** The dearest of the twenty builds of a path at the prices it names, as many as are wanted, dearest first. */
export const worstOf = (path: Path, count: number): WorstBuild[] =>
  worstBuilds(path, editionByName(path.edition) ?? currentEdition, count);
