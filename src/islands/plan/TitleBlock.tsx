import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { factById, sizeNames } from '../../calc/facts.ts';
import { today } from '../buy/day.ts';
import { saidFigure } from '../lathe/units.ts';
import { $units } from '../preferences.ts';
import { Send } from '../share/Send.tsx';
import { counted } from '../shared/format.ts';
import { LatheMap } from '../shared/LatheMap.tsx';
import { openWords, questionsAnswered } from '../shared/open-counts.ts';
import { to } from '../shared/places.ts';
import { usePlanName } from '../shared/use-plan-name.ts';
import { $path } from '../stores.ts';
import { saidFor } from './words.ts';

const FIGURES = ['swing', 'between-centres', 'spindle-power'] as const;

function Figure({ report, id }: { report: Report; id: string }) {
  const units = useStore($units);
  const fact = factById(id);
  const quantity = report.machine.facts[id];
  if (!fact || !quantity) return null;
  const typed = quantity.origin.kind === 'answered';
  return (
    <>
      {fact.name.toLowerCase()}{' '}
      {typed ? (
        <b>{saidFigure(quantity.value, fact.show, units)}</b>
      ) : (
        saidFigure(quantity.value, fact.show, units)
      )}
      {typed ? '' : ' (typical)'}
    </>
  );
}

function LatheCell({ report }: { report: Report }) {
  const parts = FIGURES.map((id) => <Figure key={id} report={report} id={id} />);
  return (
    <div class="wide-cell">
      <span class="cell-label">Lathe</span>A {sizeNames[report.machine.size]} one: {parts[0]}, {parts[1]},{' '}
      {parts[2]}. {saidFor(report, 'which-lathe')}.
    </div>
  );
}

/** The link that is the plan. Paper has it in full at its head. */
function LinkCell() {
  const path = useStore($path);
  return (
    <div class="link-code no-print">
      <div>
        <span class="cell-label">Link</span>
        <p>Opens this very plan on any device. Nothing leaves yours.</p>
        <Send path={path} page="plan/" />
      </div>
    </div>
  );
}

function answeredWords(report: Report): string {
  const { answered, asked } = questionsAnswered(report);
  const open = openWords(report);
  const settled = `${answered} of ${counted(asked, 'question')} answered.`;
  return open === '' ? settled : `${settled} Open: ${open}; the plan says what it assumes.`;
}

/** Whose plan, of which lathe, at which prices, drawn up when, and the link that opens it again. */
export function TitleBlock({ report }: { report: Report }) {
  const [date] = useState(today);
  const name = usePlanName(report);
  const { id, basis } = report.edition;
  return (
    <section class="title-block" aria-label="Title block">
      <div class="title-cell">
        <div>
          <span class="cell-label">Plan sheet</span>
          <h1>{name}</h1>
          <p class="quiet">
            {answeredWords(report)}{' '}
            <a class="no-print" href={to('shelf/')} data-keep-path>
              Your paths
            </a>
          </p>
        </div>
        <LatheMap states={Object.fromEntries(report.rooms.map(({ id, state }) => [id, state]))} />
      </div>
      <LatheCell report={report} />
      <div>
        <span class="cell-label">Prices</span>
        edition {id}. {basis}
      </div>
      <LinkCell />
      <div class="lower">
        <span class="cell-label">For</span>
        {saidFor(report, 'purpose')}
      </div>
      <div class="lower">
        <span class="cell-label">Drawn up</span>
        {date}
      </div>
    </section>
  );
}
