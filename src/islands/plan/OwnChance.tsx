import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { RiskRow } from '../../calc/evaluate.ts';
import { parseFigure } from '../lathe/parse.ts';
import { setChance } from '../purchases.ts';
import { plain } from '../shared/format.ts';
import { useFieldText } from '../shared/use-field-text.ts';
import { $path } from '../stores.ts';

const OUT_OF = 20;

/** The owner's own chance of a risk, typed as so many of twenty; empty goes back to ours. */
export function OwnChance({ risk }: { risk: RiskRow }) {
  const own = useStore($path).chances?.[risk.id];
  const [typed, setTyped] = useFieldText(own === undefined ? '' : plain(own * OUT_OF, 2));
  const [fault, setFault] = useState('');
  const take = (text: string) => {
    const reading = parseFigure(text, 'count', 'metric');
    const outside = reading.kind === 'value' && (reading.value < 0 || reading.value > OUT_OF);
    setFault(
      outside ? 'Type 0 to 20: in how many of 20 ways.' : reading.kind === 'unreadable' ? reading.say : '',
    );
    if (reading.kind === 'empty') setChance(risk.id, undefined, risk.name);
    if (reading.kind === 'value' && !outside) setChance(risk.id, reading.value / OUT_OF, risk.name);
  };
  const note = `chance-${risk.id}-note`;
  return (
    <span class="own-chance no-print">
      <label>
        <span class="small">
          yours<span class="visually-hidden"> for {risk.name}, so many of 20</span>
        </span>{' '}
        <input
          class="blank"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={fault ? note : undefined}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => take(event.currentTarget.value)}
        />{' '}
        <span class="small" aria-hidden="true">
          of 20
        </span>
      </label>
      <span id={note} role="status" class="small look">
        {fault}
      </span>
    </span>
  );
}
