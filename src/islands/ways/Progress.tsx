import { useStore } from '@nanostores/preact';
import type { SearchProgress } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';
import { counted } from '../shared/format.ts';
import { $hasWorker } from './beside.ts';
import type { PlanFigures } from './plan-figures.ts';
import { WayList } from './Results.tsx';
import type { Search } from './use-search.ts';
import { many } from './words.ts';

/** "About 1.2 million of 4,080,384 ways decided." */
export function sayProgress(progress: SearchProgress | undefined): string {
  if (!progress) return 'Setting out …';
  const { legal, share, cheapest, found } = progress;
  const decided = many(Math.round(share * legal));
  const kept = share > 0 && found > 0 ? ` ${counted(found, 'way')} kept so far.` : '';
  const first = cheapest ? 'The cheapest is found.' : 'Looking for the cheapest first.';
  return `${decided} of ${many(legal)} ways decided. ${first}${kept}`;
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
  const cheapest = progress?.cheapest;
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
          {cheapest
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
      {cheapest ? (
        <WayList
          ways={[cheapest]}
          picks={[{ way: cheapest, place: 0, title: 'Least money so far' }]}
          report={report}
          plan={plan}
          all
          showAll={() => {}}
        />
      ) : null}
    </section>
  );
}
