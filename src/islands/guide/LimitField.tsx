import { useStore } from '@nanostores/preact';
import { useId, useState } from 'preact/hooks';
import { parseFigure } from '../lathe/parse.ts';
import { $limits, type Limits, setLimit } from '../preferences.ts';
import { $shown, fromShown, toShown } from '../shared/currency.ts';
import { plain } from '../shared/format.ts';
import { useFieldText } from '../shared/use-field-text.ts';

interface Props {
  readonly name: keyof Limits;
  readonly label: string;
  readonly after?: string;
}

/** Money is typed in the currency that is shown; the limit itself is kept in dollars. */
const asShown = (name: keyof Limits, limit: number): number => (name === 'money' ? toShown(limit) : limit);
const asKept = (name: keyof Limits, typed: number): number => (name === 'money' ? fromShown(typed) : typed);

/** The owner's own limit, typed; it stands on the rod as a stop collar. Empty takes it off. */
export function LimitField({ name, label, after }: Props) {
  const limit = useStore($limits)[name];
  const { sign } = useStore($shown);
  const [typed, setTyped] = useFieldText(limit === undefined ? '' : plain(asShown(name, limit), 2));
  const [unread, setUnread] = useState('');
  const note = useId();
  const take = (text: string) => {
    const reading = parseFigure(text.replace(/[$€£¥]/g, ''), 'count', 'metric');
    setTyped(text);
    setUnread(reading.kind === 'unreadable' ? reading.say : '');
    if (reading.kind === 'empty') setLimit(name, undefined);
    if (reading.kind === 'value') setLimit(name, asKept(name, reading.value) || undefined);
  };
  return (
    <span class="aside limit">
      <label>
        <span>
          my limit<span class="visually-hidden">, {label}</span> {name === 'money' ? sign : null}
        </span>
        <input
          class="blank"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={unread ? 'true' : undefined}
          aria-describedby={unread ? note : undefined}
          onChange={(event) => take(event.currentTarget.value)}
        />
        {after ? <span>{after}</span> : null}
      </label>
      <span id={note} role="status">
        {unread ? <span class="field-message look">{unread}</span> : null}
      </span>
    </span>
  );
}
