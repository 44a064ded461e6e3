import type { Path } from '../core/path.ts';
import { decisions, rooms } from '../guide.ts';
import type { ChoiceView, Report } from '../report.ts';
import { blocksOf } from './blocks.ts';
import type { Status } from './choose.ts';
import { whyNotAsked } from './exclusions.ts';
import { optionsOf, type State } from './state.ts';

/** Every question as it stands on this path, in guide order. */
export function choiceViews(state: State, status: readonly Status[], path: Path): ChoiceView[] {
  return decisions.map((decision, at) => {
    const now = status[at]!;
    const given = path.answers[decision.id];
    return {
      decision: decision.id,
      subsystem: decision.subsystem,
      place: decision.place,
      status: now,
      notSure: given !== undefined && given.length === 0,
      options: now === 'not-asked' ? [] : optionsOf(at, state.masks[at]!),
      refused: now === 'clash' ? (given ?? []) : [],
      why: whyOf(now, at, state),
      blocked: blocksOf(state, status, at),
    };
  });
}

function whyOf(status: Status, at: number, state: State): string {
  if (status === 'answered') return 'You chose this.';
  if (status === 'not-asked') return whyNotAsked(at, state);
  if (status === 'clash')
    return 'An earlier answer rules out what you chose. Your answer is kept here; please decide again.';
  return decisions[at]!.assumeWhy;
}

/** How far each room is settled, in counts. Facts of the lathe are counted on their own page. */
export function roomViews(choices: readonly ChoiceView[]): Report['rooms'] {
  return rooms.map(({ id }) => {
    const here = choices.filter((choice) => choice.subsystem === id && choice.place === 'guide');
    const notAsked = here.filter((choice) => choice.status === 'not-asked').length;
    const answered = here.filter((choice) => choice.status === 'answered').length;
    const asked = here.length - notAsked;
    const touched = here.some((choice) => choice.status === 'answered' || choice.notSure);
    return {
      id,
      asked,
      answered,
      notAsked,
      state: answered === asked ? 'settled' : touched ? 'part' : 'open',
    };
  });
}
