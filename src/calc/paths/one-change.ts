import { answerMasks, choose, type Status } from '../choices/choose.ts';
import { optionsOf, type State, unchosen } from '../choices/state.ts';
import type { Decision } from '../core/decision.ts';
import type { Machine } from '../core/machine.ts';
import type { Answer, Path } from '../core/path.ts';
import { planState } from '../cost/ways.ts';
import { decisions } from '../guide.ts';
import { measure } from '../measures.ts';

/** A path as it is planned. */
export interface Planned {
  readonly path: Path;
  readonly state: State;
  readonly status: readonly Status[];
}

/** The same path with one answer given otherwise, where the rules let it stand beside all the others. */
export interface OneChange extends Planned {
  readonly decision: string;
  readonly option: string;
  /** Where several may be ticked: the option was ticked or unticked. */
  readonly ticked: boolean;
  /** Questions the owner left open whose planned answer moves along. */
  readonly follows: readonly string[];
}

export const plannedOn = (path: Path, machine: Machine): Planned => ({ path, ...planState(path, machine) });

/** What would be answered: the option alone, or the ticks with this one turned round; undefined where nothing is left. */
export function answerWith(decision: Decision, now: Answer, option: string): Answer | undefined {
  if (!decision.many) return now.includes(option) ? undefined : [option];
  const left = now.includes(option) ? now.filter((each) => each !== option) : [...now, option];
  return left.length > 0 ? left : undefined;
}

/** Answers of the owner that could stand before must stand after. */
const keepsAnswers = (from: Planned, to: Planned): boolean =>
  from.status.every((status, at) => status !== 'answered' || to.status[at] !== 'clash');

const follows = (from: Planned, to: Planned, changed: string): string[] =>
  decisions.flatMap(({ id }, at) =>
    id !== changed && from.state.masks[at] !== to.state.masks[at] ? [id] : [],
  );

/** The path with one question answered in full; undefined where the rules do not let it stand beside the other answers. */
export function changedTo(
  from: Planned,
  at: number,
  answer: Answer,
): (Planned & { readonly follows: readonly string[] }) | undefined {
  const { id } = decisions[at]!;
  const path = { ...from.path, answers: { ...from.path.answers, [id]: answer } };
  const state = unchosen(from.state, measure);
  const to = { path, state, status: choose(state, answerMasks(path.answers)) };
  if (to.status[at] !== 'answered' || !keepsAnswers(from, to)) return undefined;
  return { ...to, follows: follows(from, to, id) };
}

function changed(from: Planned, at: number, option: string, now: Answer): OneChange | undefined {
  const decision = decisions[at]!;
  const answer = answerWith(decision, now, option);
  const to = answer && changedTo(from, at, answer);
  return to && { ...to, decision: decision.id, option, ticked: answer.includes(option) };
}

/**
 * Every single other answer to one question that the rules allow. What the lathe or the workshop simply is cannot be
 * answered otherwise, and an option that is no finished answer is none here either.
 */
export function changesOf(from: Planned, decisionId: string): OneChange[] {
  const at = decisions.findIndex(({ id }) => id === decisionId);
  const decision = decisions[at];
  if (decision?.place !== 'guide' || from.status[at] === 'not-asked') return [];
  const now = optionsOf(at, from.state.masks[at]!);
  return decision.options
    .filter((option) => option.incomplete === undefined)
    .flatMap((option) => changed(from, at, option.id, now) ?? []);
}
