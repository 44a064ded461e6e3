import { checksOf } from '../../checks.ts';
import { optionsOf, type State } from '../../choices/state.ts';
import { type Band, NOTHING } from '../../core/band.ts';
import { sizedBand } from '../../cost/edition.ts';
import { sumOf, times } from '../../cost/exact-sums.ts';
import { riskRows } from '../../cost/risk-rows.ts';
import { wantedOf } from '../../cost/wanted.ts';
import { decisions } from '../../guide.ts';
import { keptDesignOf } from '../../measures.ts';
import { planOf } from '../../schedule/plan.ts';
import { taskHours } from '../../schedule/work.ts';
import { parts } from '../../trade.ts';
import { unitsAt } from '../counting.ts';
import { countingOf, type Present } from '../present.ts';
import type { ColumnChecks, HardestSkill, PlanFigures } from './column.ts';

const MOST_RISKS = 5;

function hardestOf(state: State): HardestSkill {
  const asked = decisions.flatMap((decision, at) =>
    optionsOf(at, state.masks[at]!).map((option) => ({
      decision: decision.id,
      option,
      skill: decision.options.find(({ id }) => id === option)!.skill,
    })),
  );
  const level = asked.toSorted((a, b) => b.skill - a.skill)[0]?.skill ?? 1;
  const asks = asked.filter(({ skill }) => skill === level);
  return { level, asks: asks.map(({ decision, option }) => ({ decision, option })) };
}

function checksIn(state: State): ColumnChecks {
  const all = checksOf(keptDesignOf(state));
  const those = (result: 'look' | 'stop') =>
    all
      .filter((check) => check.result === result)
      .map(({ id, label, subsystem }) => ({ id, label, subsystem }));
  return {
    ok: all.filter(({ result }) => result === 'ok').length,
    look: those('look'),
    stop: those('stop'),
    open: all.filter(({ result }) => result === 'not-yet').length,
  };
}

function risksOf({ planned, machine, edition }: Present): PlanFigures['risks'] {
  const { state, path } = planned;
  return riskRows(state, path, edition, wantedOf(state, machine, edition.book))
    .filter(({ counted }) => counted)
    .slice(0, MOST_RISKS)
    .map(({ id, name, ofTwenty }) => ({ id, name, ofTwenty }));
}

/** Dollars a year at the planning prices, what is in the drawer left out. */
export function yearlyOf(present: Present): Band {
  const { planned, edition, machine } = present;
  const { book } = edition;
  const counting = countingOf(present, planned.state);
  const bands = parts.map((part, at): Band => {
    if (!part.yearly || !book.parts[part.id] || planned.path.owned.includes(part.id)) return NOTHING;
    return times(sizedBand(book, part.id, part.scaled === true, machine.size), unitsAt(at, counting));
  });
  return sumOf(bands);
}

/** Skill, troubles, checks, stopping points and cuts for good of a plan. */
export function planFigures(present: Present): PlanFigures {
  const { state } = present.planned;
  const final = taskHours(state).filter(({ task }) => task.undo === 'cannot-be-undone');
  return {
    skill: hardestOf(state),
    risks: risksOf(present),
    checks: checksIn(state),
    stops: planOf(state).stages.flatMap(({ id: stage, stop }) =>
      stop ? [{ id: stop.id, say: stop.say, stage }] : [],
    ),
    final: final.map(({ task }) => ({ task: task.id, name: task.name })),
  };
}
