import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Limit } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { $limits } from '../preferences.ts';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { Notices } from '../shared/Notices.tsx';
import { to } from '../shared/places.ts';
import { $path, $report, start } from '../stores.ts';
import { AskedFor } from './AskedFor.tsx';
import { FreeQuestions } from './FreeQuestions.tsx';
import { usuallyFree } from './free.ts';
import { $demands, limitsFrom, loadDemands, takeOff } from './limits.ts';
import { stillHolds } from './open-way.ts';
import { Progress } from './Progress.tsx';
import { planFigures } from './plan-figures.ts';
import { Results } from './Results.tsx';
import { type Search, useCount, useSearch, useStanding } from './use-search.ts';
import { many, roughTime } from './words.ts';

const isUnderWay = (search: Search | undefined): boolean =>
  search !== undefined && !search.found && !search.stopped;

/** What may be free: what the owner ticked, or what carries most. */
function useFree(path: Path) {
  const standing = useStanding(path);
  const carried = standing?.carried;
  const [chosen, setFree] = useState<readonly string[]>();
  const free = useMemo(() => {
    if (!carried) return [];
    return chosen
      ? chosen.filter((id) => carried.some(({ decision }) => decision === id))
      : usuallyFree(carried);
  }, [carried, chosen]);
  return { carried, settled: standing?.plan, free, setFree };
}

function sayCount(free: number, legal: number | undefined): string {
  if (free === 0) return 'No question is free: only your plan as it is would be looked at. Tick some.';
  if (legal === undefined) return 'Counting the ways …';
  return `${many(legal)} ways fit the rules. Deciding all of them takes ${roughTime(legal)} on an ordinary computer, several times that on a phone; the first result comes early, and you can stop.`;
}

function SearchSheet({ report }: { report: Report }) {
  const path = useStore($path);
  const { carried, settled, free, setFree } = useFree(path);
  const plan = planFigures(report, settled);
  const { search, begin, stop } = useSearch();
  const running = isUnderWay(search);
  const legal = useCount(path, free, running);
  const set = () => {
    setFree(free);
    begin(path, { free, limits: limitsFrom($limits.get(), $demands.get()) });
  };
  const relax = (limits: readonly Limit[]) => {
    for (const limit of limits) takeOff(limit);
    set();
  };
  const found = search?.found;
  const isOld = search !== undefined && !stillHolds(search.path, path, found?.frontier ?? []);
  return (
    <>
      <div class="ways-ask">
        <AskedFor />
        {carried ? (
          <FreeQuestions carried={carried} free={free} setFree={setFree} />
        ) : (
          <section class="rule-section">
            <h2>Free questions</h2>
            <p role="status">Working out which questions carry most …</p>
          </section>
        )}
      </div>
      <div class="ways-start no-print">
        <button type="button" class="button primary" disabled={free.length === 0 || running} onClick={set}>
          Find the ways through
        </button>
        <p class="small" role="status">
          {carried ? sayCount(free.length, legal) : ''}
        </p>
      </div>
      <Receipt />
      {isOld ? (
        <p class="notice look" role="status">
          Your answers or figures have changed since this search. Search again for ways from where you are
          now.
        </p>
      ) : null}
      <p class="visually-hidden" role="status">
        {found ? `The search is over: ${found.frontier.length} ways found.` : running ? 'Searching.' : ''}
      </p>
      {search && !found ? <Progress search={search} report={report} plan={plan} stop={stop} /> : null}
      {search && found ? (
        <Boundary what="what the search found">
          <Results
            key={search.seconds}
            search={search}
            found={found}
            report={report}
            plan={plan}
            relax={relax}
          />
        </Boundary>
      ) : null}
    </>
  );
}

/** The page: limits, free questions, the search and what it found. */
export function Ways() {
  const report = useStore($report);
  useEffect(() => {
    start();
    loadDemands();
  }, []);
  return (
    <div class="page ways">
      <h1>The ways through</h1>
      <p class="lede">
        Say what you can spend and what it must do. The search goes through every allowed way of answering the
        free questions and keeps those that no other beats on money, hours and strength. Nothing is left to a
        sample.
      </p>
      <Notices />
      <WithFigures what="the ways through">
        {report ? <SearchSheet report={report} /> : <p role="status">Working out your plan first …</p>}
      </WithFigures>
      <noscript>
        <p>
          The search needs JavaScript. <a href={to('questions/')}>The questions</a> and the book read without
          it.
        </p>
      </noscript>
    </div>
  );
}
