import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { factById, sizeNames } from '../../calc/facts.ts';
import { saidFigure } from '../lathe/units.ts';
import { $units } from '../preferences.ts';
import { counted } from '../shared/format.ts';
import { LinkCell } from './LinkCell.tsx';
import { setRunningHeader } from './running-header.ts';
import { planName, saidFor } from './words.ts';

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
    <div>
      <span class="cell-label">Lathe</span>A {sizeNames[report.machine.size]} one: {parts[0]}, {parts[1]},{' '}
      {parts[2]}. {saidFor(report, 'which-lathe')}.
    </div>
  );
}

function answeredWords({ choices, openQuestions }: Report): string {
  const asked = choices.filter(({ status }) => status !== 'not-asked').length;
  const open = openQuestions.length;
  const settled = `${asked - open} of ${counted(asked, 'question')} answered.`;
  return open === 0
    ? settled
    : `${settled} ${counted(open, 'is', 'are')} open; the plan says what it assumes.`;
}

const today = (): string => {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

const HEAD_LENGTH = 58;

/** A name that fits at the head of a page beside edition, date and page number. */
const shortened = (name: string): string =>
  name.length <= HEAD_LENGTH ? name : `${name.slice(0, HEAD_LENGTH - 1)}…`;

/** Whose plan, of which lathe, at which prices, drawn up when, and the link that opens it again. */
export function TitleBlock({ report }: { report: Report }) {
  const [running, setRunning] = useState(false);
  const [date] = useState(today);
  const name = planName(report);
  const { id, basis } = report.edition;
  useEffect(() => {
    setRunning(setRunningHeader(`${shortened(name)}  |  price edition ${id}  |  printed ${date}`));
  }, [name, id, date]);
  return (
    <>
      {running ? null : (
        <p class="print-only print-header">
          <b>{name}</b>
          <span>price edition {id}</span>
          <span>printed {date}</span>
        </p>
      )}
      <section class="title-block" aria-label="Title block">
        <div>
          <span class="cell-label">Plan sheet</span>
          <h1>{name}</h1>
          <p class="quiet">{answeredWords(report)}</p>
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
    </>
  );
}
