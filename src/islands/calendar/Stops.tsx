import { useStore } from '@nanostores/preact';
import type { Band } from '../../calc/core/band.ts';
import type { Calendar, StagedOrAtOnce, StopPlan } from '../../calc/working.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { MayStop } from '../plan/Glyphs.tsx';
import { saidFor } from '../plan/words.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { moneyRange } from '../shared/format.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { $path } from '../stores.ts';
import type { PartProps } from './part.ts';
import { Within } from './Within.tsx';
import { extraWords, inHours, inMoney, inWeeks, MOST } from './words.ts';

const HEADS = [
  'Order of work',
  `Money so far, ${MOST}`,
  'Hours so far',
  'Weeks from the start',
  'Sold again it brings',
];

function Resale({ resale: [low, , high] }: { resale: Band }) {
  return high === 0 ? <>nothing</> : <DimensionLine text={moneyRange(low, high)} length={118} />;
}

function Row({ order, stop }: { order: string; stop: StopPlan | undefined }) {
  if (!stop) return null;
  return (
    <tr {...asRow}>
      <th {...asRowHead}>{order}</th>
      <td {...asCell} data-label="Money so far">
        <Within range={stop.money} measure={inMoney} />
      </td>
      <td {...asCell} data-label="Hours so far">
        <Within range={stop.hours} measure={inHours} />
      </td>
      <td {...asCell} data-label="Weeks">
        <Within range={stop.weeks} measure={inWeeks} />
      </td>
      <td {...asCell} data-label="Sold again">
        <Resale resale={stop.resale} />
      </td>
    </tr>
  );
}

function Stop({ stop, atOnce, stage }: { stop: StopPlan; atOnce: StopPlan | undefined; stage: string }) {
  return (
    <tbody class="group">
      <tr {...asRow}>
        <th {...asRowHead} colSpan={5} scope="rowgroup" class="stop-say">
          <MayStop /> After “{stage}” you may stop and have {stop.say}
        </th>
      </tr>
      <Row order="In stages" stop={stop} />
      <Row order="All at once" stop={atOnce} />
    </tbody>
  );
}

function Extra({ extra }: Pick<StagedOrAtOnce, 'extra'>) {
  return (
    <>
      <p>
        What working in stages takes, against all at once in the very same ways, with the same prices and the
        same troubles:
      </p>
      <dl class="extra">
        <div>
          <dt>Money</dt>
          <dd>{extraWords(extra.money, inMoney)}</dd>
        </div>
        <div>
          <dt>Hours</dt>
          <dd>{extraWords(extra.hours, inHours)}</dd>
        </div>
        <div>
          <dt>Weeks to the end</dt>
          <dd>{extraWords(extra.weeks, inWeeks)}</dd>
        </div>
        <div>
          <dt>Weeks out of use</dt>
          <dd>{extraWords(extra.weeksOut, inWeeks)}</dd>
        </div>
      </dl>
    </>
  );
}

function Answered({ staged, stages }: { staged: StagedOrAtOnce } & Pick<Calendar, 'stages'>) {
  const nameOf = (id: string): string => stages.find((stage) => stage.id === id)?.name ?? id;
  return (
    <>
      <Extra extra={staged.extra} />
      <table class="table-stack stops" {...asTable} aria-label="Stopping points">
        <ColumnHeads heads={HEADS} />
        {staged.inStages.map((stop) => (
          <Stop
            key={stop.id}
            stop={stop}
            atOnce={staged.atOnce.find(({ id }) => id === stop.id)}
            stage={nameOf(stop.after)}
          />
        ))}
      </table>
    </>
  );
}

/** Where the work may end for good, in stages and all at once, and what stages cost more. */
export function Stops({ report, calendar }: PartProps) {
  const path = useStore($path);
  const { answer: staged } = useAnswer('staged', path);
  const order = saidFor(report, 'order-of-work');
  return (
    <section class="rule-section" id="stopping" tabIndex={-1}>
      <h2>Stopping points</h2>
      <p>
        {order ? `Your plan stands on: ${order.charAt(0).toLowerCase()}${order.slice(1)}. ` : ''}Money is for
        what has been needed so far. Parts ordered for later stages may have been paid by then.
      </p>
      {staged ? (
        <Answered staged={staged} stages={calendar.stages} />
      ) : (
        <p role="status">Working out both orders of work …</p>
      )}
    </section>
  );
}
