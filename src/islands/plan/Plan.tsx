import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { BareAndAllIn } from '../buy/BareAndAllIn.tsx';
import { Receipt } from '../guide/Receipt.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Later } from '../shared/in-turn.tsx';
import { Notices } from '../shared/Notices.tsx';
import { onPrint } from '../shared/on-print.ts';
import { $report, start } from '../stores.ts';
import { WhySheet } from '../why/Why.tsx';
import { Assumptions } from './Assumptions.tsx';
import { Bill } from './Bill.tsx';
import { Checks } from './Checks.tsx';
import { Contents } from './Contents.tsx';
import { Findings } from './Findings.tsx';
import { BesideThePage, type Sheet } from './job.ts';
import { Measure } from './Measure.tsx';
import { Outline, OutlineToCome } from './Outline.tsx';
import { PaperHead } from './PaperHead.tsx';
import { $paper, watchPaper } from './paper.ts';
import { Risks } from './Risks.tsx';
import { Rods } from './Rods.tsx';
import { SafetyPage } from './SafetyPage.tsx';
import { Settings } from './Settings.tsx';
import { Sources } from './Sources.tsx';
import { Stages } from './Stages.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { VerdictRow } from './VerdictRow.tsx';

function Working() {
  return (
    <>
      <h1>Plan</h1>
      <p role="status">Working out the plan from your answers …</p>
      <OutlineToCome />
      <noscript>
        <p>
          The sums of a plan need JavaScript. The book, the method and the safety page read without it; so do
          the questions.
        </p>
      </noscript>
    </>
  );
}

interface PartOfSheet {
  readonly what: string;
  readonly Part: (props: Sheet) => ComponentChildren;
}

/** What fills the first screen of a phone. */
const FIRST: readonly PartOfSheet[] = [
  { what: 'the title block', Part: TitleBlock },
  { what: 'the note on this outline', Part: Outline },
  { what: 'the verdict', Part: VerdictRow },
];

const REST: readonly PartOfSheet[] = [
  { what: 'the head of the paper', Part: PaperHead },
  { what: 'the contents', Part: Contents },
  { what: 'the three rods', Part: Rods },
  { what: 'what to look at again', Part: Findings },
  { what: 'the parts of the money', Part: BareAndAllIn },
  { what: 'the stages', Part: Stages },
  { what: 'what to measure', Part: Measure },
  { what: 'the parts list', Part: Bill },
  { what: 'the risks', Part: Risks },
  { what: 'the checks', Part: Checks },
  { what: 'the settings sheet', Part: Settings },
  { what: 'the assumptions', Part: Assumptions },
  { what: 'the safety page', Part: SafetyPage },
  { what: 'the sources', Part: Sources },
];

/** Paper shows what the screen folds away; not every browser does that by itself. */
function unfold(): void {
  for (const folded of document.querySelectorAll('details')) folded.open = true;
}

const within = ({ what, Part }: PartOfSheet, report: Report) => (
  <Boundary key={what} what={what}>
    <Part report={report} />
  </Boundary>
);

function Parts({ report }: { report: Report }) {
  return useMemo(
    () => (
      <>
        <BesideThePage path={report.path} />
        {FIRST.map((part) => within(part, report))}
        {REST.map((part) => (
          <Later key={part.what}>{within(part, report)}</Later>
        ))}
      </>
    ),
    [report],
  );
}

/** The plan sheet of the path in the address: everything that follows from the answers, to read or to print. */
export function Plan() {
  const report = useStore($report);
  const paper = useStore($paper);
  useEffect(() => {
    start();
    const stop = [onPrint(unfold), watchPaper()];
    return () => {
      for (const each of stop) each();
    };
  }, []);
  return (
    <div class="page plan-sheet" data-paper={paper}>
      <Notices />
      <EditionNote />
      <WithFigures what="the plan">{report ? <Parts report={report} /> : <Working />}</WithFigures>
      <Receipt />
      <WhySheet />
    </div>
  );
}
