import { useStore } from '@nanostores/preact';
import type { Spread } from '../../calc/evaluate.ts';
import type { Calendar } from '../../calc/working.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { keepsAnother } from '../plan/numbers.ts';
import { setStart } from '../purchases.ts';
import { middleHalf, plain, weeks, weeksMark, weeksRange } from '../shared/format.ts';
import { lathePlace } from '../shared/places.ts';
import { Rod } from '../shared/Rod.tsx';
import { $path } from '../stores.ts';
import type { PartProps } from './part.ts';
import { MOST } from './words.ts';

/** Id of the field for the first day, where the save button sends those who have not given it. */
export const FIRST_DAY = 'first-day';

const halfOf = ({ twenty }: Spread): string => {
  const { from, to } = middleHalf(twenty);
  return weeksRange(from, to);
};

/** Weeks in which no task can be done because all wait for a parcel. */
const idleWords = ({ p10, p50, p90 }: Calendar['weeksIdle']): string =>
  p90 < 0.05
    ? 'There is always work to do while a parcel is on its way.'
    : `Everything waits for a parcel for typically ${weeks(p50)}; in ${MOST} for ${weeksRange(p10, p90)}.`;

function Sentence({ report, calendar }: PartProps) {
  const { hoursAWeek, weeks: all, weeksOut, weeksIdle } = calendar;
  const isSpare = keepsAnother(report);
  return (
    <>
      <p class="verdict">
        Half of the ways take <b class="figure">{halfOf(all)}</b> from start to finish at{' '}
        <b class="figure">{plain(hoursAWeek, 1)} h</b> a week.
      </p>
      <p>
        {isSpare ? 'This lathe is apart' : 'The lathe is out of use'} for <b>{halfOf(weeksOut)}</b> of them in
        half of the ways, on and off{isSpare ? '; the other lathe keeps working' : ''}. {idleWords(weeksIdle)}{' '}
        <a class="no-print" href={lathePlace('hours-per-week')} data-keep-path>
          Change the hours a week
        </a>
      </p>
    </>
  );
}

function FirstDay({ isUnderWay }: { isUnderWay: boolean }) {
  const { start } = useStore($path);
  return (
    <div class="field no-print">
      <label for={FIRST_DAY}>First day of the work</label>
      <p class="field-hint" id={`${FIRST_DAY}-hint`}>
        {isUnderWay
          ? 'Tasks are done already: weeks and days count what is left, from today or from this day if it is later.'
          : 'With it, weeks become dates. Without it, weeks count from the start.'}
      </p>
      <input
        id={FIRST_DAY}
        type="date"
        min="2000-01-01"
        max="2099-12-31"
        value={start ?? ''}
        aria-describedby={`${FIRST_DAY}-hint`}
        onChange={({ currentTarget }) => {
          // Half-typed years are days too, of the first centuries.
          if (currentTarget.validity.valid) setStart(currentTarget.value || undefined);
        }}
      />
    </div>
  );
}

/** The sentence about the weeks, the first day, and the rods. */
export function HowLong({ report, calendar }: PartProps) {
  return (
    <>
      <Sentence report={report} calendar={calendar} />
      <FirstDay isUnderWay={calendar.tasks.some(({ done }) => done)} />
      <Receipt />
      {calendar.start === undefined ? null : <p class="print-only">First day: {calendar.start}.</p>}
      <div class="rods">
        {[
          { title: 'Weeks from start to finish', spread: calendar.weeks },
          {
            title: keepsAnother(report) ? 'Weeks this lathe is apart' : 'Weeks the lathe is out of use',
            spread: calendar.weeksOut,
          },
        ].map(({ title, spread }) => (
          <section key={title}>
            <h2>{title}</h2>
            <Rod values={[...spread.twenty]} label={title} format={weeksMark} unitWord="weeks" width={372} />
          </section>
        ))}
      </div>
    </>
  );
}
