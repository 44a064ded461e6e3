import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Limit, WaysThrough, WayThrough } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';
import { $units } from '../preferences.ts';
import { $shown, toShown } from '../shared/currency.ts';
import { counted } from '../shared/format.ts';
import { asColumnHead, asRow, asTable } from '../shared/table-roles.ts';
import { Chart } from './Chart.tsx';
import type { Pick } from './Picks.tsx';
import { Picks, picksOf, sayFigures } from './Picks.tsx';
import type { PlanFigures } from './plan-figures.ts';
import { Relax } from './Relax.tsx';
import type { Search } from './use-search.ts';
import { WayRow } from './WayRow.tsx';
import { sayLimit, sayProof, wayHours, wayMoney } from './words.ts';

const SHOWN = 12;

interface ListProps {
  readonly ways: readonly WayThrough[];
  readonly picks: readonly Pick[];
  readonly report: Report;
  readonly plan: PlanFigures;
  readonly all: boolean;
  /** Whether it is proved that none takes less money than the first. */
  readonly proved?: boolean;
  readonly showAll: () => void;
}

/** Every way in words and figures: what the chart shows, and more. */
export function WayList({ ways, picks, report, plan, all, proved = true, showAll }: ListProps) {
  const title = (place: number) => picks.find((pick) => pick.place === place)?.title;
  const isShown = (place: number) => all || place < SHOWN || title(place) !== undefined;
  const hidden = ways.filter((_, place) => !isShown(place)).length;
  return (
    <>
      <table class="table-stack ways-table" {...asTable}>
        <caption>Every one of them, the cheapest first</caption>
        <thead>
          <tr {...asRow}>
            <th {...asColumnHead}>Way</th>
            <th {...asColumnHead} class="number">
              Money, 16 of 20 inside
            </th>
            <th {...asColumnHead} class="number">
              Hours, 16 of 20 inside
            </th>
            <th {...asColumnHead} class="number">
              Out of use
            </th>
            <th {...asColumnHead}>Why it is here</th>
          </tr>
        </thead>
        <tbody>
          {ways.map((way, place) =>
            isShown(place) ? (
              <WayRow
                key={place}
                way={way}
                cheaper={ways[place - 1]}
                number={place + 1}
                proved={proved}
                title={title(place)}
                report={report}
                plan={plan}
              />
            ) : null,
          )}
        </tbody>
      </table>
      {hidden > 0 ? (
        <p class="no-print">
          <button type="button" class="button small" onClick={showAll}>
            Show the other {counted(hidden, 'way')}
          </button>
        </p>
      ) : null}
      {hidden > 0 ? <p class="print-only">{counted(hidden, 'more way')} on the screen.</p> : null}
    </>
  );
}

interface Props {
  readonly search: Search;
  readonly found: WaysThrough;
  readonly report: Report;
  readonly plan: PlanFigures;
}

const most = (limits: readonly Limit[], kind: 'money' | 'hours'): number | undefined => {
  const limit = limits.find((each) => each.kind === kind);
  return limit && 'most' in limit ? limit.most : undefined;
};

/** Brings a row of the list to the reader, once it is drawn. */
const goToRow = (place: number): void => {
  window.requestAnimationFrame(() => {
    const row = document.getElementById(`way-${place + 1}`);
    row?.scrollIntoView({ block: 'center' });
    row?.focus({ preventScroll: true });
  });
};

/** What was found: the chart, the few to look at first, and the list. */
function Found({ search, found, report, plan }: Props) {
  useStore($shown);
  const [all, setAll] = useState(false);
  const { limits } = search.wanted;
  const picks = picksOf(found);
  const ways = found.frontier;
  const money = most(limits, 'money');
  return (
    <>
      <div class="ways-picture">
        <figure>
          <h3>Money against hours</h3>
          <Chart
            ways={ways.map(({ figures }) => ({ money: toShown(figures.moneyP80), hours: figures.hoursP80 }))}
            plan={{ money: toShown(plan.moneyP80), hours: plan.hoursP80 }}
            money={money === undefined ? undefined : toShown(money)}
            hours={most(limits, 'hours')}
            words={ways.map((way, place) => `Way ${place + 1}: ${sayFigures(way)}.`)}
            picked={picks.map(({ place }) => place)}
            open={(place) => {
              setAll(true);
              goToRow(place);
            }}
          />
          <figcaption class="small quiet">
            Each figure is one that 16 of 20 ways it could turn out stay under. Nearer the lower left corner
            is better. Washers on the line: nothing here is both cheaper and quicker; hollow ones are here for
            their strength, or are better typically. Hatched: over a limit. Blue wash: cheaper and quicker
            than your plan ({wayMoney(plan.moneyP80)}, {wayHours(plan.hoursP80)})
            {report.openQuestions.length > 0
              ? ', which stands here with what is open answered as it assumes'
              : ''}
            .
          </figcaption>
        </figure>
        <Picks picks={picks} plan={plan} />
      </div>
      <WayList ways={ways} picks={picks} report={report} plan={plan} all={all} showAll={() => setAll(true)} />
    </>
  );
}

function Kept({ limits }: { limits: readonly Limit[] }) {
  const units = useStore($units);
  const words = limits.map((limit) => sayLimit(limit, units));
  return (
    <p class="small">
      {words.length === 0 ? 'No limit was set.' : `Limits it was asked to keep: ${words.join('; ')}.`}
    </p>
  );
}

export function Results({ relax, ...props }: Props & { relax: (limits: readonly Limit[]) => void }) {
  const { found, search } = props;
  const count = found.frontier.length;
  return (
    <section class="rule-section" aria-labelledby="ways-found">
      <h2 id="ways-found">
        {count === 0
          ? 'No way keeps to all of these limits'
          : `${counted(count, 'way')} that no other beats on money, hours and strength`}
      </h2>
      <p class="small">
        {sayProof(found)} It took {(search.seconds ?? 0).toFixed(1)} seconds.
      </p>
      <Kept limits={search.wanted.limits} />
      {count === 0 ? <Relax sets={found.relax} relax={relax} /> : <Found {...props} />}
    </section>
  );
}
