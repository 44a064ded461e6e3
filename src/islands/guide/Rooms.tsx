import type { Report } from '../../calc/evaluate.ts';
import { decisionById, type Room, rooms } from '../../calc/guide.ts';
import { counted } from '../shared/format.ts';
import { Hatch } from '../shared/Hatch.tsx';
import { useInTurn } from '../shared/in-turn.tsx';
import { LatheMap } from '../shared/LatheMap.tsx';
import { questionPlace, to } from '../shared/places.ts';
import { $report } from '../stores.ts';
import { choiceOf, placeOf, questionsOf } from './order.ts';
import { QuestionLink } from './QuestionLink.tsx';

type RoomView = Report['rooms'][number];

export const viewOf = (report: Report | undefined, room: Room): RoomView | undefined =>
  report?.rooms.find(({ id }) => id === room.id);

/** "settled, 4 answers", "2 of 4 open". */
export function sayRoom(view: RoomView | undefined, room: Room): string {
  if (!view) return counted(questionsOf(room).length, 'question');
  if (view.asked === 0) return 'nothing to ask';
  if (view.state === 'settled') return `settled, ${counted(view.answered, 'answer')}`;
  return `${view.asked - view.answered} of ${view.asked} open`;
}

/** "20 of 31 questions answered. Your answers removed 9." */
export function sayProgress(report: Report | undefined): string {
  if (!report) return counted(rooms.flatMap(questionsOf).length, 'question');
  const sum = (count: (view: RoomView) => number) =>
    report.rooms.reduce((total, view) => total + count(view), 0);
  const removed = sum((view) => view.notAsked);
  const answered = `${sum((view) => view.answered)} of ${sum((view) => view.asked)} questions answered.`;
  return removed > 0 ? `${answered} Your answers removed ${removed}.` : answered;
}

/** Where a room opens: its first question that is still open, else its first that is asked. */
export function doorOf(room: Room, report: Report | undefined): string {
  const questions = questionsOf(room);
  const status = (id: string) => choiceOf(report, id)?.status;
  const open = questions.find(({ id }) => status(id) === 'open' || status(id) === 'clash');
  const asked = questions.find(({ id }) => status(id) !== 'not-asked');
  return (open ?? asked ?? questions[0])?.id ?? '';
}

const KEY_HATCH = 'key-hatch';

const LEGEND = [
  ['open', 'nothing answered'],
  ['part', 'some answered, or not sure'],
  ['settled', 'settled'],
] as const;

/** What the shading of the drawing means, in words. */
export function Key() {
  return (
    <ul class="map-key">
      {LEGEND.map(([state, words]) => (
        <li key={state}>
          <svg class="drawing lathe" width="34" height="18" viewBox="0 0 34 18" aria-hidden="true">
            {state === 'part' ? (
              <defs>
                <Hatch id={KEY_HATCH} tone="blue" pitch={6} />
              </defs>
            ) : null}
            <g class={`region is-${state}`}>
              <path
                class="part"
                d="M1 1h26l6 7v9H1z"
                fill={state === 'part' ? `url(#${KEY_HATCH})` : undefined}
              />
            </g>
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
}

/** The nine rooms with the lathe they belong to, and how far each is settled, in words. */
export function Rooms({ current }: { current: string }) {
  const report = useInTurn($report);
  const decision = decisionById(current);
  const here = decision ? placeOf(decision) : undefined;
  const states = Object.fromEntries((report?.rooms ?? []).map(({ id, state }) => [id, state]));
  return (
    <nav aria-label="Rooms">
      <LatheMap states={states} {...(here ? { current: here.room.id } : {})} />
      <ol class="room-list">
        {rooms.map((room) => (
          <li key={room.id}>
            <QuestionLink href={questionPlace(doorOf(room, report))} current={room.id === here?.room.id}>
              <span class="room-number">{room.number}</span>
              <span class="room-name">{room.name}</span>
              <span class="room-state">{sayRoom(viewOf(report, room), room)}</span>
            </QuestionLink>
          </li>
        ))}
      </ol>
      <p class="quiet small">{sayProgress(report)}</p>
      <p>
        <a href={to('questions/')} data-keep-path>
          All questions on one sheet
        </a>
      </p>
      <Key />
    </nav>
  );
}
