import { useStore } from '@nanostores/preact';
import { useEffect } from 'preact/hooks';
import type { Decision } from '../../calc/core/decision.ts';
import type { Report } from '../../calc/evaluate.ts';
import { type Room, rooms } from '../../calc/guide.ts';
import { sayAnswer } from '../receipts.ts';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { Notices } from '../shared/Notices.tsx';
import { questionPlace } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { $path, $report, start } from '../stores.ts';
import { CheckAnswers } from './CheckAnswers.tsx';
import { choiceOf, questionsOf } from './order.ts';
import { Receipt } from './Receipt.tsx';
import { RoomMap } from './RoomMap.tsx';
import { sayProgress, sayRoom } from './Rooms.tsx';

/** How a question stands, in words: the answer, what the plan takes meanwhile, or why it is not asked. */
function Standing({ decision, report }: { decision: Decision; report: Report | undefined }) {
  const given = useStore($path).answers[decision.id];
  const choice = choiceOf(report, decision.id);
  if (!choice) return <>{given ? sayAnswer(decision, given) : ''}</>;
  const taken = sayAnswer(decision, choice.options);
  switch (choice.status) {
    case 'answered':
      return <b>{taken}</b>;
    case 'not-asked':
      return (
        <span class="quiet">
          Not asked. {choice.why}
          {given && given.length > 0 ? ` Your answer is kept: ${sayAnswer(decision, given)}.` : ''}
        </span>
      );
    case 'clash':
      return (
        <>
          <ResultMark result="look" word="Decide again." /> You chose “{sayAnswer(decision, choice.refused)}”.
          Until then the plan takes “{taken}”.
        </>
      );
    case 'open':
      return (
        <>
          <b>{choice.notSure ? 'Not sure yet.' : 'Open.'}</b> The plan takes “{taken}”.
        </>
      );
  }
}

function Row({ decision, report }: { decision: Decision; report: Report | undefined }) {
  const answered = choiceOf(report, decision.id)?.status === 'answered';
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        {decision.name}
        <span class="row-ask">{decision.ask}</span>
      </th>
      <td {...asCell} data-label="Answer">
        <span>
          <Standing decision={decision} report={report} />
        </span>
      </td>
      <td {...asCell} class="answer-go">
        <a href={questionPlace(decision.id, 'check')} data-keep-path>
          {answered ? 'Change' : 'Answer'}
          <span class="visually-hidden">: {decision.name}</span>
        </a>
      </td>
    </tr>
  );
}

function RoomTable({ room, report }: { room: Room; report: Report | undefined }) {
  const view = report?.rooms.find(({ id }) => id === room.id);
  return (
    <section class="rule-page">
      <h2>
        {room.number} {room.name} <span class="room-words">{sayRoom(view, room)}</span>
      </h2>
      <table class="table-stack answer-table" {...asTable}>
        <thead>
          <tr {...asRow}>
            <th {...asColumnHead}>Question</th>
            <th {...asColumnHead}>Answer on your path</th>
            <th {...asColumnHead}>
              <span class="visually-hidden">Go there</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {questionsOf(room).map((decision) => (
            <Row key={decision.id} decision={decision} report={report} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Sheet() {
  const report = useStore($report);
  return (
    <>
      <Notices />
      <RoomMap report={report} />
      <p class="quiet">{sayProgress(report)}</p>
      <Receipt />
      {rooms.map((room) => (
        <RoomTable key={room.id} room={room} report={report} />
      ))}
      <WithFigures what="the check of your answers">
        <CheckAnswers report={report} />
      </WithFigures>
    </>
  );
}

/** Every question by room with how it stands, and below it what to look at before the plan. */
export function AnswerSheet() {
  useEffect(start, []);
  return (
    <Boundary what="the list of questions">
      <Sheet />
    </Boundary>
  );
}
