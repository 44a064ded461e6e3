import type { Path } from '../calc/core/path.ts';
import type { Report } from '../calc/evaluate.ts';
import { ask } from './ask/ask.ts';

/**
 * The report of a path at the prices it names; an edition that we do not have gives today's prices. It is worked out
 * beside the page, which knows the path again by its identity.
 */
export const reportOf = async (path: Path): Promise<Report> => ({
  ...(await ask('report', path, undefined)),
  path,
});
