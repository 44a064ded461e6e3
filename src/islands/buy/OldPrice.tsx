import { useId, useState } from 'preact/hooks';
import type { Band } from '../../calc/core/band.ts';
import type { Report } from '../../calc/evaluate.ts';
import { type Carried, carryForward } from '../../calc/old-prices.ts';
import { priceRange } from '../plan/words.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { parseAmount } from './amount.ts';

const FIRST_YEAR = 2010;

function Answer({ carried }: { carried: Carried }) {
  if (!carried.ok) return <p class="field-message stop">{carried.say}</p>;
  const { low, likely, high, limits } = carried;
  const band: Band = [Number(low), Number(likely), Number(high)];
  return (
    <>
      <p>
        Today that would be somewhere in <DimensionLine text={priceRange(band)} length={130} bold />
      </p>
      <ul class="small">
        {limits.map((limit) => (
          <li key={limit}>{limit}</li>
        ))}
      </ul>
    </>
  );
}

/** "I saw this part at so much in that year": carried to the year of the prices, with a band that widens with age. */
export function OldPrice({ report }: { report: Report }) {
  const toYear = Number(report.edition.date.slice(0, 4));
  const [typed, setTyped] = useState('');
  const [year, setYear] = useState(String(toYear - 5));
  const id = useId();
  const amount = parseAmount(typed);
  const years = Array.from({ length: toYear - FIRST_YEAR + 1 }, (_, back) => String(toYear - back));
  return (
    <section class="rule-section no-print" id="old-price" tabIndex={-1}>
      <h2>A price you saw somewhere, from another year</h2>
      <p>Build logs and old pages are full of prices. Carry one to today before you set it beside ours.</p>
      <div class="field-pairs">
        <div class="field">
          <label for={`${id}-amount`}>It cost</label>
          <span class="field-cells">
            <span class="field-unit">$</span>
            <input
              id={`${id}-amount`}
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={typed}
              aria-invalid={amount.kind === 'unreadable' ? 'true' : undefined}
              onInput={(event) => setTyped(event.currentTarget.value)}
            />
          </span>
        </div>
        <div class="field">
          <label for={`${id}-year`}>in the year</label>
          <span class="field-cells">
            <select id={`${id}-year`} value={year} onChange={(event) => setYear(event.currentTarget.value)}>
              {years.map((each) => (
                <option key={each}>{each}</option>
              ))}
            </select>
          </span>
        </div>
      </div>
      <div role="status">
        {amount.kind === 'unreadable' ? <p class="field-message stop">{amount.say}</p> : null}
        {amount.kind === 'amount' ? (
          <Answer carried={carryForward({ amount: amount.text, year: Number(year), toYear })} />
        ) : null}
      </div>
    </section>
  );
}
