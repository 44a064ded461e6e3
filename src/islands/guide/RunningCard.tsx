import { useStore } from '@nanostores/preact';
import { sizeNames } from '../../calc/facts.ts';
import { $shown } from '../shared/currency.ts';
import { useInTurn } from '../shared/in-turn.tsx';
import { to } from '../shared/places.ts';
import { $path, $report } from '../stores.ts';
import { WhySheet } from '../why/Why.tsx';
import { BottomBar } from './BottomBar.tsx';
import { CardChecks, CardOpen, CardYearly } from './CardChecks.tsx';
import { CardMoved } from './CardMoved.tsx';
import { CardRods } from './CardRods.tsx';

/** The path in short: never one figure, and never the only place where a figure stands. */
export function RunningCard() {
  const report = useInTurn($report);
  const { size, edition } = useStore($path);
  const { word } = useStore($shown);
  return (
    <section id="card" tabIndex={-1} aria-labelledby="card-title">
      <div class="card-head">
        <h2 id="card-title">Your path</h2>
        <span class="quiet small">20 ways it could turn out</span>
      </div>
      <noscript>
        <p>The sums need JavaScript. The questions, the answers and the book read without it.</p>
      </noscript>
      <div class="card-sections">
        <CardRods />
        {report ? (
          <>
            <CardYearly report={report} />
            <CardChecks report={report} />
            <CardOpen report={report} />
          </>
        ) : null}
        <CardMoved />
        <section class="card-section">
          <p class="quiet">
            Planning figures from memory of the trade, not quotations. Prices of edition{' '}
            {report?.edition.id ?? edition},{' '}
            {word === 'dollars' ? 'US dollars' : `in ${word} at your own rate`}, for a{' '}
            {sizeNames[report?.machine.size ?? size]} lathe.
          </p>
          <p>
            <a href={to('shelf/')} data-keep-path>
              All your paths
            </a>
          </p>
        </section>
      </div>
      {report ? <BottomBar report={report} /> : null}
      <WhySheet />
    </section>
  );
}
