import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import { onCalendar } from '../../calc/buying.ts';
import type { Report } from '../../calc/evaluate.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { $path, $report, start } from '../stores.ts';
import { WhySheet } from '../why/Why.tsx';
import { BareAndAllIn } from './BareAndAllIn.tsx';
import { Files } from './Files.tsx';
import { follow } from './follow.ts';
import { GradeOfEstimate } from './GradeOfEstimate.tsx';
import { OldPrice } from './OldPrice.tsx';
import { OwnedFirst } from './OwnedFirst.tsx';
import { Sellers } from './Sellers.tsx';
import { Settings } from './Settings.tsx';
import { SheetHead } from './SheetHead.tsx';
import { Sums } from './Sums.tsx';
import { Views } from './Views.tsx';
import { WorstBuilds } from './WorstBuilds.tsx';

const PARTS: readonly {
  readonly what: string;
  readonly Part: (props: { report: Report; isDated: boolean }) => ComponentChildren;
}[] = [
  { what: 'the head of the paper', Part: SheetHead },
  { what: 'the drawer', Part: OwnedFirst },
  { what: 'the sums', Part: Sums },
  { what: 'the lines', Part: Lines },
  { what: 'the shops', Part: Sellers },
  { what: 'the parts of the money', Part: BareAndAllIn },
  { what: 'the grade of the estimate', Part: GradeOfEstimate },
  { what: 'the dear ones', Part: WorstBuilds },
  { what: 'the old price', Part: OldPrice },
  { what: 'the terms', Part: Settings },
  { what: 'the files', Part: Files },
];

function Working() {
  return (
    <>
      <p role="status">Working out what your path needs …</p>
      <noscript>
        <p>
          The list needs JavaScript. Every price stands on the page of prices, and the book reads without it.
        </p>
      </noscript>
    </>
  );
}

/**
 * The report with the calendar's last days to order; those of the answers before stand until the new ones are worked out,
 * so that lines do not jump to and fro. Not dated before the first are there.
 */
function useDated(report: Report | undefined) {
  const path = useStore($path);
  const { answer: calendar } = useAnswer('calendar', path, report !== undefined);
  const dated = useMemo(() => report && calendar && onCalendar(report, calendar), [report, calendar]);
  return { report: dated ?? report, isDated: dated !== undefined };
}

function Lines({ report, isDated }: { report: Report; isDated: boolean }) {
  if (isDated) return <Views report={report} />;
  return (
    <>
      <section class="rule-section no-print" id="lines" tabIndex={-1}>
        <h2>What to buy</h2>
        <p role="status">Working out the last days to order …</p>
      </section>
      <div class="print-only">
        <Views report={report} />
      </div>
    </>
  );
}

/** Drawn anew with new figures only: what is typed and ticked stands in its own part until they come. */
function Parts({ report, isDated }: { report: Report; isDated: boolean }) {
  return useMemo(
    () => (
      <>
        {PARTS.map(({ what, Part }) => (
          <Boundary key={what} what={what}>
            <Part report={report} isDated={isDated} />
          </Boundary>
        ))}
      </>
    ),
    [report, isDated],
  );
}

/** What to buy on the path in the address: where each line stands, what it costs, and the files that carry it. */
export function BuyList() {
  const { report, isDated } = useDated(useStore($report));
  useEffect(() => {
    const line = new URLSearchParams(window.location.search).get('line');
    if (line !== null) follow(line);
    start();
  }, []);
  return (
    <div class="page buy-list">
      <Notices />
      <EditionNote />
      <h1>Buy list</h1>
      <WithFigures what="the buy list">
        {report ? <Parts report={report} isDated={isDated} /> : <Working />}
        <Receipt />
      </WithFigures>
      <WhySheet />
    </div>
  );
}
