import { checksOf } from '../../calc/checks.ts';
import type { Path } from '../../calc/core/path.ts';
import { planState } from '../../calc/cost/ways.ts';
import { machineOf } from '../../calc/facts.ts';
import { keptDesignOf } from '../../calc/measures.ts';
import { inventedOwners } from '../../content/invented-owners.ts';
import { referencePaths } from '../../content/reference-paths.ts';

const checksOn = (path: Path) =>
  checksOf(keptDesignOf(planState(path, machineOf(path.size, path.facts)).state));

const worked: readonly Path[] = [...inventedOwners, ...referencePaths].map(({ path }) => path);

/** A lever collet behind the headstock raises a check of its own, which none of the worked paths has. */
const withLever = worked.map((path) => ({
  ...path,
  answers: { ...path.answers, 'work-holding': ['lever-collets'] },
}));

/** What each check is called, gathered from the checks that arise on the reference paths and for the invented owners. */
export const checkLabels: ReadonlyMap<string, string> = new Map(
  [...withLever, ...worked].flatMap((path) =>
    checksOn(path).map(({ id, label }): [string, string] => [id, label]),
  ),
);
