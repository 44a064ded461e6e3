import { useStore } from '@nanostores/preact';
import { currentName } from '../../link/known.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { $path, $report, setEdition } from '../stores.ts';
import { money } from './format.ts';
import { to } from './places.ts';

/** What today's prices would make of the typical sum, before anything is changed. */
const saidToday = (before: number, today: number): string =>
  money(before) === money(today)
    ? `At today’s prices the typical sum stays about ${money(today)}.`
    : `At today’s prices the typical sum is ${money(today)} instead of ${money(before)}.`;

function Today() {
  const path = useStore($path);
  const report = useStore($report);
  const { answer, isOld } = useAnswer('today-money', path, report !== undefined);
  if (!report || answer === undefined || isOld || report.path !== path) return null;
  return <> {saidToday(report.money.p50, answer)}</>;
}

/** An old link keeps its figures; this says what today's prices would make of them, and offers them. */
export function EditionNote() {
  const { edition } = useStore($path);
  if (edition === currentName) return null;
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
