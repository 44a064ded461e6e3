import type { Path } from '../calc/core/path.ts';
import { evaluate, type Report } from '../calc/evaluate.ts';
import { currentEdition, editionByName } from '../content/edition.ts';

/** The report of a path at the prices it names; an edition that we do not have gives today's prices. */
export const reportOf = (path: Path): Report => evaluate(path, editionByName(path.edition) ?? currentEdition);
