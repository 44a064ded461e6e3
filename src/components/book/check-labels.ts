import { checksOf } from '../../calc/checks.ts';
import type { Path } from '../../calc/core/path.ts';
import { planState } from '../../calc/cost/ways.ts';
import { machineOf } from '../../calc/facts.ts';
import { keptDesignOf } from '../../calc/measures.ts';
import { inventedOwners } from '../../content/invented-owners.ts';
import { referencePaths } from '../../content/reference-paths.ts';

const checksOn = (path: Path) => checksOf(keptDesignOf(planState(path, machineOf(path.size, path.facts)).state));

/** What each check is called, gathered from the checks that arise for the reference paths and the invented owners. */
export const checkLabels: ReadonlyMap<string, string> = new Map(
  [...inventedOwners, ...referencePaths].flatMap(({ path }) =>
    checksOn(path).map(({ id, label }): [string, string] => [id, label]),
  ),
);
