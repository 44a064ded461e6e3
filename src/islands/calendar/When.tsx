import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { useAnswer } from '../ask/use-answer.ts';
import { Outline, OutlineToCome } from '../plan/Outline.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { PaperHead } from '../shared/PaperHead.tsx';
import { $path, $report, start } from '../stores.ts';
import { Deliveries } from './Deliveries.tsx';
import { HowLong } from './HowLong.tsx';
import { MoneyInTime } from './MoneyInTime.tsx';
import type { PartProps } from './part.ts';
import { SaveCalendar } from './SaveCalendar.tsx';
import { Stops } from './Stops.tsx';
import { StripOfWeeks } from './StripOfWeeks.tsx';
import { ThumbRule } from './ThumbRule.tsx';
import { WaitsFor } from './WaitsFor.tsx';

const PARTS: readonly {
  readonly what: string;
  readonly Part: (props: PartProps) => ComponentChildren;
}[] = [
  { what: 'how long it takes', Part: HowLong },
  { what: 'the strip of weeks', Part: StripOfWeeks },
  { what: 'what waits for what', Part: WaitsFor },
  { what: 'the deliveries', Part: Deliveries },
  { what: 'the money in time', Part: MoneyInTime },
  { what: 'the stopping points', Part: Stops },
  { what: 'the rule of thumb', Part: ThumbRule },
  { what: 'the calendar file', Part: SaveCalendar },
];

function Working() {
  return (
    <>
      <p role="status">Working out the calendar …</p>
      <OutlineToCome />
      <noscript>
        <p>
          The sums of a calendar need JavaScript. The book and the method read without it; so do the
          questions.
        </p>
      </noscript>
    </>
  );
}

/** Paper shows what the screen folds away; not every browser does that by itself. */
function unfold(): void {
  for (const folded of document.querySelectorAll('details')) folded.open = true;
}

function Figures() {
  const report = useStore($report);
  const path = useStore($path);
  const { answer: calendar, isOld } = useAnswer('calendar', path);
  return (
    <>
      {report && calendar ? (
        <>
          <Outline report={report} />
          <p role="status" class="quiet small">
            {isOld ? 'Working out the calendar again …' : ''}
          </p>
          <PaperHead report={report} title="Calendar" page="calendar/" />
          {PARTS.map(({ what, Part }) => (
            <Boundary key={what} what={what}>
              <Part report={report} calendar={calendar} />
            </Boundary>
          ))}
        </>
      ) : (
        <Working />
      )}
    </>
  );
}

/** When: the path in the address laid out in weeks, with what waits for what, deliveries, money and stopping points. */
export function When() {
  useEffect(() => {
    start();
    window.addEventListener('beforeprint', unfold);
    return () => window.removeEventListener('beforeprint', unfold);
  }, []);
  return (
    <div class="page when">
      <Notices />
      <EditionNote />
      <h1>When</h1>
      <WithFigures what="the calendar">
        <Figures />
      </WithFigures>
    </div>
  );
}
