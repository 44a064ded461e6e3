import type { Decision } from '../../calc/core/decision.ts';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { decisions, type Room, roomById, rooms } from '../../calc/guide.ts';

const guide: readonly Decision[] = decisions.filter((decision) => decision.place === 'guide');

/** The questions of a room that the guide asks, in order; facts of the lathe have a page of their own. */
export const questionsOf = (room: Room): readonly Decision[] =>
  room.decisions.filter((decision) => decision.place === 'guide');

export const choiceOf = (report: Report | undefined, id: string): ChoiceView | undefined =>
  report?.choices.find((choice) => choice.decision === id);

/** The nearest question before (-1) or after (1) this one that arises on the path; undefined at either end. */
export function neighbour(id: string, step: 1 | -1, report?: Report): Decision | undefined {
  const at = guide.findIndex((decision) => decision.id === id);
  const ahead = step === 1 ? guide.slice(at + 1) : guide.slice(0, Math.max(0, at)).toReversed();
  return ahead.find((decision) => choiceOf(report, decision.id)?.status !== 'not-asked');
}

/** Where a question stands: its room, its number there, and how many the room has. */
export function placeOf(decision: Decision): { room: Room; number: number; of: number } {
  const room = roomById(decision.subsystem) ?? (rooms[0] as Room);
  const questions = questionsOf(room);
  return { room, number: questions.indexOf(decision) + 1, of: questions.length };
}

/** The title of a question's page, without the name of the site: short enough to be read in a list. */
export const titleOf = (decision: Decision): string => decision.ask;
