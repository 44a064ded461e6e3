import type { Grade, Report } from '../../calc/evaluate.ts';
import { listed, plain } from '../shared/format.ts';

const per = (share: number): string => `${plain(share * 100)} %`;

const NAMES: Readonly<Record<keyof Grade['shares'], string>> = {
  spent: 'ordered or paid',
  quoted: 'quoted',
  settled: 'our planning prices for what you have decided',
  assumed: 'assumed: open questions, typical figures, trouble',
};

function Shares({ shares }: { shares: Grade['shares'] }) {
  const rows = (Object.keys(NAMES) as (keyof Grade['shares'])[]).filter((name) => shares[name] > 0);
  return (
    <>
      <div class="share-bar" aria-hidden="true">
        {rows.map((name) => (
          <span key={name} class={`share-${name}`} style={`flex-grow: ${shares[name]}`} />
        ))}
      </div>
      <ul class="list-plain share-key">
        {rows.map((name) => (
          <li key={name}>
            <span class={`share-mark share-${name}`} aria-hidden="true" /> <b>{per(shares[name])}</b>{' '}
            {NAMES[name]}
          </li>
        ))}
      </ul>
    </>
  );
}

/** How far the estimate is defined, in the terms that estimators use, and what the figure rests on. */
export function GradeOfEstimate({ report }: { report: Report }) {
  const { grade } = report;
  const open = report.openQuestions.length;
  return (
    <section class="rule-section" id="grade" tabIndex={-1}>
      <h2>How good an estimate this is</h2>
      <Shares shares={grade.shares} />
      <p>
        <b>Class {grade.class} of five</b> in the terms of estimators; 1 is priced line by line.
      </p>
      <ul>
        {grade.basis.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p class="quiet small">
        Classes: AACE International, Recommended Practice 18R-97. To make it better:{' '}
        {listed([
          'ask for prices of the dearest lines',
          ...(open > 0 ? ['answer what is open'] : []),
          'measure what is typical',
        ])}
        .
      </p>
    </section>
  );
}
