import { useState } from 'preact/hooks';
import { asICalendar, eventsOf } from '../../export/calendar.ts';
import { planName } from '../plan/words.ts';
import { fileTypes, saveFile } from '../save-file.ts';
import { usePlanName } from '../shared/use-plan-name.ts';
import { FIRST_DAY } from './HowLong.tsx';
import type { PartProps } from './part.ts';

/** Now in UTC as calendars write it: 20270104T080000Z. */
const stampOf = (now: Date): string => now.toISOString().replace(/[-:]|\.\d+/g, '');

/** "carriage-and-cross-slide-in-stages": the same for small changes of a plan, so that its events move and none is added. */
export const keyOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

function save({ report, calendar }: PartProps, name: string): string {
  const events = eventsOf(calendar, keyOf(planName(report)));
  saveFile(
    `calendar-${calendar.start}.ics`,
    asICalendar(name, events, stampOf(new Date())),
    fileTypes.calendar,
  );
  return 'Saved. Open the file with your calendar; a newer file of the same plan moves the days.';
}

/** Stages and order-by days as a file that calendars read. */
export function SaveCalendar(props: PartProps) {
  const [said, setSaid] = useState('');
  const name = usePlanName(props.report);
  const isDated = props.calendar.start !== undefined;
  const run = () => {
    if (isDated) setSaid(save(props, name));
    else document.getElementById(FIRST_DAY)?.focus();
  };
  return (
    <section class="rule-section no-print" id="save" tabIndex={-1}>
      <h2>In your own calendar</h2>
      <p>
        The stages with their typical days, and a note on each day to order by, as an iCalendar file (.ics).
      </p>
      <p class="save-row">
        <button type="button" class="button" onClick={run}>
          Save as a calendar file
        </button>
        {isDated ? null : (
          <span>
            A calendar file needs a day to start on:{' '}
            <a href={`#${FIRST_DAY}`}>give the first day of the work</a>.
          </span>
        )}
      </p>
      <p role="status">{said}</p>
    </section>
  );
}
