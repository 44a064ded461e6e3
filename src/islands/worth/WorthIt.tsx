import { useStore } from '@nanostores/preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { Receipt } from '../guide/Receipt.tsx';
import { OutlineToCome } from '../plan/Outline.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { usePlanName } from '../shared/use-plan-name.ts';
import { $path, $report, start } from '../stores.ts';
import { Beside } from './beside/Beside.tsx';
import { Judgement } from './Judgement.tsx';
import { Parts } from './Parts.tsx';
import { WhatSwings } from './swings/WhatSwings.tsx';

function PrintedHead({ report }: { report: Report }) {
  return (
    <p class="print-only print-header">
      <b>{usePlanName(report)}</b>
      <span>price edition {report.edition.id}</span>
    </p>
  );
}

function Sheet() {
  const path = useStore($path);
  const report = useStore($report);
  const { answer: side, isOld } = useAnswer('side-by-side', path, report !== undefined);
  if (!report || !side) {
    return (
      <div class="until-drawn">
        <p role="status">Working out whether it is worth it …</p>
        <OutlineToCome />
      </div>
    );
  }
  return (
    <div aria-busy={isOld}>
      <PrintedHead report={report} />
      <Boundary what="the verdict">
        <Judgement report={report} worth={side.worth} />
      </Boundary>
      <Boundary what="the parts you make">
        <Parts worth={side.worth} />
      </Boundary>
      <Boundary what="the comparison">
        <Beside report={report} side={side} />
      </Boundary>
    </div>
  );
}

/** The path without its parts, which swing nothing: the same object as long as the rest says the same. */
function useWithoutFamilies(): Path {
  const { families: _, ...path } = useStore($path);
  const held = useRef<Path>(path);
  if (JSON.stringify(held.current) !== JSON.stringify(path)) held.current = path;
  return held.current;
}

/** Asked after the rest of the page, which does not wait for it. */
function Swing() {
  const path = useWithoutFamilies();
  const report = useStore($report);
  const { answer: swings } = useAnswer('swings', path, report !== undefined);
  return (
    <section class="rule-section" id="swings" tabIndex={-1}>
      <h2>What swings it</h2>
      {swings ? (
        <WhatSwings swings={swings} />
      ) : (
        <p role="status">Trying every answer and everything unknown, one at a time …</p>
      )}
    </section>
  );
}

/** Whether a conversion is worth it, beside everything else that may answer the same wish. */
export function WorthIt() {
  useEffect(start, []);
  return (
    <div class="page worth">
      <Notices />
      <EditionNote />
      <h1>Is it worth it</h1>
      <WithFigures what="this page">
        <Sheet />
        <Boundary what="what swings it">
          <Swing />
        </Boundary>
        <Receipt />
      </WithFigures>
    </div>
  );
}
