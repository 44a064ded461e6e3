import { useStore } from '@nanostores/preact';
import { currentName } from '../../link/known.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { $path, $report, setEdition } from '../stores.ts';
import { money } from './format.ts';
import { to } from './places.ts';
import { useReady } from './ready.ts';

/** A usual sum, dollars: only as long as what will stand in its place. */
const USUAL = 7000;

/** What today's prices would make of the typical sum, before anything is changed. */
const saidToday = (before: number, today: number): string =>
  money(before) === money(today)
    ? `At today’s prices the typical sum stays about ${money(today)}.`
    : `At today’s prices the typical sum is ${money(today)} instead of ${money(before)}.`;

/** Until it is known, its room is kept by a sentence of the same length that is not shown. */
function Today() {
  const path = useStore($path);
  const report = useStore($report);
  const { answer, isOld } = useAnswer('today-money', path, report !== undefined);
  if (!report || answer === undefined || isOld || report.path !== path) {
    return (
      <span class="not-yet" aria-hidden="true">
        {' '}
        {saidToday(USUAL, USUAL + 100)}
      </span>
    );
  }
  return <> {saidToday(report.money.p50, answer)}</>;
}

function Note({ edition }: { edition: string }) {
  return (
    <p class="notice slight no-print">
      These are the figures of price edition {edition}, as this path was made with it. Edition {currentName}{' '}
      is in use now.
      <Today /> <a href={to(`prices/${currentName}/#changes`)}>What changed</a>{' '}
      <button type="button" class="link-button" onClick={() => setEdition(currentName)}>
        Use edition {currentName}
      </button>
    </p>
  );
}

/** An old link keeps its figures; this says what today's prices would make of them, and offers them. */
export function EditionNote() {
  const { edition } = useStore($path);
  const ready = useReady();
  if (!ready) {
    return (
      <div class="notice-room is-older" aria-hidden="true">
        <Note edition={edition} />
      </div>
    );
  }
  return edition === currentName ? null : <Note edition={edition} />;
}
