import { useStore } from '@nanostores/preact';
import type { Report, Spread } from '../../calc/evaluate.ts';
import { saySpread } from '../guide/CardRods.tsx';
import { LimitField } from '../guide/LimitField.tsx';
import { $limits } from '../preferences.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { counted, exactBoth, moneyRange } from '../shared/format.ts';
import { MoneyRod } from '../shared/MoneyRod.tsx';
import { Why } from '../why/Why.tsx';
import { isInHand } from './states.ts';

/** Eight of ten ways, as the rows of the head say it. */
const wide = ({ p10, p90 }: Spread): string => moneyRange(p10, p90);

function Row({ name, about, children }: { name: string; about: string; children: preact.ComponentChildren }) {
  return (
    <div class="sum-row">
      <dt>
        {name} <span class="quiet small">{about}</span>
      </dt>
      <dd>{children}</dd>
    </div>
  );
}

const isSome = (amount: string): boolean => Number(amount) !== 0;

/** How many lines, how many in hand; what is spent, what is quoted, what is still open, and the twenty ways. */
export function Sums({ report }: { report: Report }) {
  const limit = useStore($limits).money;
  const { money, bill } = report;
  const lines = bill.once.filter(({ credit }) => !credit);
  const inHand = lines.filter(({ state }) => isInHand(state)).length;
  const { committed, quoted, stillToBuy, trouble, troubleBy } = money;
  return (
    <section class="buy-sums" id="sums" tabIndex={-1}>
      <p class="buy-count">
        <b>
          {counted(lines.length, 'line')}, {inHand} in hand
        </b>
      </p>
      <dl class="sums">
        <Row name="Committed" about="ordered or paid, exact">
          <b>{exactBoth(committed)}</b>
        </Row>
        {isSome(quoted) ? (
          <Row name="Quoted" about="not yet ordered, exact">
            {exactBoth(quoted)}
          </Row>
        ) : null}
        <Row
          name="Still to pay"
          about={isSome(quoted) ? '16 of 20 ways, the quotes among it' : '16 of 20 ways'}
        >
          <DimensionLine text={wide(stillToBuy)} length={150} />
        </Row>
        <Row
          name="Set by for trouble"
          about={troubleBy === 'risks' ? 'from the risks, one by one' : 'a flat share, in place of the risks'}
        >
          <DimensionLine text={wide(trouble)} length={150} />
        </Row>
      </dl>
      <div class="buy-rod">
        <h2>Money, everything in</h2>
        <p>{saySpread(money, 'money', limit)}</p>
        <MoneyRod
          values={[...money.twenty]}
          {...(limit === undefined ? {} : { limit })}
          label="Money, everything in"
          width={340}
        />
        <p class="small no-print">
          <LimitField name="money" label="Money" />{' '}
          <Why asked={{ kind: 'total', id: 'money' }} name="Money, everything in">
            Why this much?
          </Why>
        </p>
      </div>
    </section>
  );
}
