import type { Path } from '../../calc/core/path.ts';
import { type WorstBuild, worstBuilds } from '../../calc/worst-builds.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** The dearest of the twenty builds of a path at the prices it names. */
export const worstOf = (path: Path): WorstBuild[] =>
  worstBuilds(path, editionByName(path.edition) ?? currentEdition);
