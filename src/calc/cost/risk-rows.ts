import type { State } from '../choices/state.ts';
import type { Path } from '../core/path.ts';
import type { RiskRow } from '../report.ts';
import { risks } from '../trade.ts';
import type { Edition } from './edition.ts';
import { chanceOf, isCounted, leversOf, ownChance, sparesHeld } from './risks.ts';
import { BUILDS } from './strata.ts';
import type { Wanted } from './wanted.ts';

/** Mean over all builds of what a risk costs in the builds that it strikes. */
function expected(column: Float64Array, builds: number): number {
  let sum = 0;
  for (let place = 0; place < builds; place += 1) sum += column[place]!;
  return sum / BUILDS / 100;
}

/** What of a risk is the same on every path. */
const shown = risks.map(
  ({
    levers: _levers,
    when: _when,
    countedIn: _countedIn,
    spares: _spares,
    kind: _kind,
    chance: _chance,
    ...rest
  }) => rest,
);

/** The risks of a path, ranked by what they cost on average: money, with an hour weighed as ten dollars to order them. */
export function riskRows(state: State, path: Path, edition: Edition, wanted: readonly Wanted[]): RiskRow[] {
  const rows = risks.flatMap((risk, at): RiskRow[] => {
    const ours = chanceOf(at, state);
    if (ours === 0) return [];
    const theirs = ownChance(at, path.chances);
    const chance = theirs ?? ours;
    const builds = Math.round(chance * BUILDS);
    const held = sparesHeld(at, wanted, path.owned);
    return [
      {
        ...shown[at]!,
        injury: risk.injury === true,
        counted: isCounted(risk),
        chance,
        ours,
        ...(theirs === undefined ? {} : { theirs }),
        ofTwenty: Math.round(chance * 20),
        expectedMoney: held.length > 0 ? 0 : expected(edition.risks[at]!.money, builds),
        expectedHours: expected(edition.risks[at]!.hours, builds),
        ...(held.length > 0 ? { spares: held } : {}),
        levers: leversOf(at, state),
      },
    ];
  });
  return rows.sort((a, b) => weight(b) - weight(a));
}

/** Ten dollars an hour only ranks the list; it enters no total. */
const weight = (row: RiskRow): number => row.expectedMoney + 10 * row.expectedHours;
