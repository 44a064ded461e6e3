import { useStore } from '@nanostores/preact';
import { useEffect, useRef } from 'preact/hooks';
import { decisionById } from '../../calc/guide.ts';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { $place, startGuide } from './navigate.ts';
import { titleOf } from './order.ts';
import { Question } from './Question.tsx';
import { Rooms } from './Rooms.tsx';
import { RunningCard } from './RunningCard.tsx';

/** Names the tab and puts the reader at the question, as a page of its own would. */
function announce(question: string): void {
  const decision = decisionById(question);
  if (decision) document.title = `${titleOf(decision)} – Halfnut`;
  document.getElementById('question-title')?.focus({ preventScroll: true });
}

/** The page of a question: the question, the running card, the rooms: in the order of a phone. `id` is the question that the page was made for. */
export function Guide({ id }: { id: string }) {
  const place = useStore($place);
  const question = place?.question ?? id;
  const shown = useRef(id);
  useEffect(startGuide, []);
  useEffect(() => {
    if (shown.current === question) return;
    shown.current = question;
    announce(question);
  }, [question]);
  return (
    <div class="grid-guide">
      <div class="centre">
        <Boundary what="the question">
          <Question id={question} back={place?.back} />
        </Boundary>
      </div>
      <aside class="card" aria-label="Running card">
        <WithFigures what="the running card">
          <RunningCard />
        </WithFigures>
      </aside>
      <div class="rail">
        <Boundary what="the list of rooms">
          <Rooms current={question} />
        </Boundary>
      </div>
    </div>
  );
}
