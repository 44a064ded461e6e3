import type { Grade, Report } from '../../calc/evaluate.ts';
import { listed, plain } from '../shared/format.ts';
import { Hatch } from '../shared/Hatch.tsx';

const per = (share: number): string => `${plain(share * 100)} %`;

const NAMES: Readonly<Record<keyof Grade['shares'], string>> = {
  spent: 'ordered or paid',
  quoted: 'quoted',
  settled: 'our planning prices for what you have decided',
  assumed: 'assumed: open questions, typical figures, trouble',
};

type Share = keyof typeof NAMES;

/** Known stands solid, ours washed, assumed hatched. */
const FILLS: Readonly<Record<Share, string>> = {
  spent: 'var(--blue)',
  quoted: 'url(#share-quoted)',
  settled: 'var(--wash2)',
  assumed: 'url(#share-assumed)',
};

/** The shares end to end, as places along the bar in percent. */
function placesOf(rows: readonly Share[], shares: Grade['shares']): { name: Share; from: number }[] {
  let from = 0;
  return rows.map((name) => {
    const place = { name, from };
    from += shares[name] * 100;
    return place;
  });
}

function Shares({ shares }: { shares: Grade['shares'] }) {
  const rows = (Object.keys(NAMES) as Share[]).filter((name) => shares[name] > 0);
  return (
    <>
      <svg class="share-bar" width="100%" height="14" aria-hidden="true">
        <defs>
          <Hatch id="share-quoted" tone="blue" pitch={4} weight={2} />
          <Hatch id="share-assumed" tone="ink" pitch={6} weight={1} />
        </defs>
        {placesOf(rows, shares).map(({ name, from }) => (
          <rect key={name} x={`${from}%`} width={`${shares[name] * 100}%`} height="14" fill={FILLS[name]} />
        ))}
      </svg>
      <ul class="list-plain share-key">
        {rows.map((name) => (
          <li key={name}>
            <svg class="share-mark" width="14" height="14" aria-hidden="true">
              <rect width="14" height="14" fill={FILLS[name]} />
            </svg>{' '}
            <b>{per(shares[name])}</b> {NAMES[name]}
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
