import { useStore } from '@nanostores/preact';
import type { SearchProgress, WayThrough } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';
import { counted } from '../shared/format.ts';
import { $hasWorker } from './beside.ts';
import type { PlanFigures } from './plan-figures.ts';
import { WayList } from './Results.tsx';
import type { Search } from './use-search.ts';
import { many, wayMoney } from './words.ts';

/** "About 1.2 million of 4,080,384 ways decided." */
export function sayProgress(progress: SearchProgress | undefined): string {
  if (!progress) return 'Setting out …';
  const { legal, share, cheapest, proved, found } = progress;
  const decided = many(Math.round(share * legal));
  const kept = share > 0 && found > 0 ? ` ${counted(found, 'way')} kept so far.` : '';
  return `${decided} of ${many(legal)} ways decided. ${sayFirst(cheapest, proved)}${kept}`;
}

function sayFirst(cheapest: WayThrough | undefined, proved: boolean): string {
  if (!cheapest) return proved ? 'None keeps to the limits.' : 'Looking for the cheapest first.';
  return proved
    ? 'The cheapest is found.'
    : `Looking for the cheapest first: ${wayMoney(cheapest.figures.moneyP80)} is the least so far.`;
}

interface Props {
  readonly search: Search;
  readonly report: Report;
  readonly plan: PlanFigures;
  readonly stop: () => void;
}

/** How far the search has come, its first result, and a way to stop it. */
export function Progress({ search, report, plan, stop }: Props) {
  const hasWorker = useStore($hasWorker);
  const { progress, stopped } = search;
  const { cheapest, proved = false } = progress ?? {};
  // A row that another may replace under the finger is not offered while the search goes on.
  const isOffered = cheapest !== undefined && (proved || stopped);
  return (
    <section class="rule-section ways-progress" aria-label="The search">
      <h2>{stopped ? 'Stopped' : 'Searching'}</h2>
      {stopped ? null : (
        <progress aria-label="Part of the ways that is decided" max={1} value={progress?.share ?? 0} />
      )}
      <p>{sayProgress(progress)}</p>
      {hasWorker ? null : (
        <p class="small">
          This browser cannot work beside the page, so the search runs on the page in slices; the page may be
          slow under the finger meanwhile.
        </p>
      )}
      {stopped ? (
        <p class="small">
          {isOffered
            ? 'What is below was the cheapest found by then. Search again for all of them.'
            : 'Nothing was found by then.'}
        </p>
      ) : (
        <p>
          <button type="button" class="button" onClick={stop}>
            Stop
          </button>
        </p>
      )}
      {isOffered ? (
        <WayList
          ways={[cheapest]}
          picks={[{ way: cheapest, place: 0, title: proved ? 'Least money' : 'Least money so far' }]}
          proved={proved}
          report={report}
          plan={plan}
          all
          showAll={() => {}}
        />
      ) : null}
    </section>
  );
}
