import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { factById } from '../../calc/facts.ts';
import { FactField } from '../lathe/FactField.tsx';
import { setAllowance, setCurrency, setStart } from '../purchases.ts';
import { $path } from '../stores.ts';
import { AmountField } from './Sellers.tsx';

function Currency() {
  const { currency } = useStore($path);
  const [code, setCode] = useState(currency?.code ?? '');
  const [rate, setRate] = useState(currency?.perDollar);
  const sound = /^[A-Z]{3}$/.test(code);
  const take = (nextCode: string, nextRate: string | undefined) => {
    setCode(nextCode);
    setRate(nextRate);
    if (nextCode === '' || nextCode === 'USD') setCurrency(undefined);
    else if (/^[A-Z]{3}$/.test(nextCode) && nextRate && Number(nextRate) > 0)
      setCurrency({ code: nextCode, perDollar: nextRate });
  };
  return (
    <div class="field-pairs">
      <div class="field">
        <label for="own-code">Your currency</label>
        <p class="field-hint" id="own-code-hint">
          Three letters, as on a bank statement. Empty: US dollars.
        </p>
        <span class="field-cells">
          <input
            id="own-code"
            type="text"
            maxLength={3}
            autoComplete="off"
            autoCapitalize="characters"
            value={code}
            aria-describedby="own-code-hint own-code-fault"
            aria-invalid={code !== '' && !sound ? 'true' : undefined}
            onInput={(event) => setCode(event.currentTarget.value.toUpperCase())}
            onChange={(event) => take(event.currentTarget.value.toUpperCase(), rate)}
          />
        </span>
        <div id="own-code-fault" role="status">
          {code !== '' && !sound ? (
            <p class="field-message stop">
              A code has three letters, such as EUR or GBP. Dollars are used until then.
            </p>
          ) : code !== '' && code !== 'USD' && !rate ? (
            <p class="field-message look">Type the rate too; dollars are used until then.</p>
          ) : null}
        </div>
      </div>
      <AmountField
        label="One US dollar buys"
        hint="The rate your bank gives you. We never look one up."
        unit={sound ? code : 'of yours'}
        value={rate ?? ''}
        onValue={(text) => take(code, text)}
      />
    </div>
  );
}

function Start() {
  const { start } = useStore($path);
  return (
    <div class="field">
      <label for="start-day">First day of the work</label>
      <p class="field-hint" id="start-day-hint">
        With it, “order by” becomes a date. Without it, the days count from the start.
      </p>
      <input
        id="start-day"
        type="date"
        value={start ?? ''}
        aria-describedby="start-day-hint"
        onChange={(event) => setStart(event.currentTarget.value || undefined)}
      />
    </div>
  );
}

function Trouble() {
  const { allowance } = useStore($path);
  const flat = allowance !== undefined;
  return (
    <fieldset>
      <legend>Money for trouble</legend>
      <p class="field-hint">One of the two, never both: the same trouble would be paid twice.</p>
      <label class="choice">
        <input type="radio" name="trouble" checked={!flat} onChange={() => setAllowance(undefined)} />
        <span>From the risks, one by one, in the ways where they strike</span>
      </label>
      <label class="choice">
        <input type="radio" name="trouble" checked={flat} onChange={() => setAllowance(0.15)} />
        <span>A flat share of the goods, the same in every way</span>
      </label>
      {flat ? (
        <AmountField
          label="Flat share"
          hint="10 to 25 % is usual (common practice, no source)."
          unit="%"
          value={String(Math.round(allowance * 1000) / 10)}
          onValue={(text) => setAllowance(text === undefined ? undefined : Math.min(1, Number(text) / 100))}
        />
      ) : null}
    </fieldset>
  );
}

const TAXES = ['tax-rate', 'duty-rate', 'landed-rate'];

/** What the sums of the list stand on: currency, start, tax rates, and how trouble is paid for. */
export function Settings({ report }: { report: Report }) {
  const facts = TAXES.flatMap((id) => factById(id) ?? []);
  return (
    <section class="rule-section no-print" id="terms" tabIndex={-1}>
      <h2>Currency, tax, start and trouble</h2>
      <div class="field-pairs">
        {facts.map((fact) => (
          <FactField key={fact.id} fact={fact} size={report.machine.size} />
        ))}
      </div>
      <Currency />
      <Start />
      <Trouble />
    </section>
  );
}
