import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import { parseFigure } from '../lathe/parse.ts';
import { $limits, type Limits, setLimit } from '../preferences.ts';
import { plain } from '../shared/format.ts';

interface Props {
  readonly name: keyof Limits;
  readonly label: string;
  readonly before?: string;
  readonly after?: string;
}

/** The owner's own limit, typed; it stands on the rod as a stop collar. Empty takes it off. */
export function LimitField({ name, label, before, after }: Props) {
  const limit = useStore($limits)[name];
  const [typed, setTyped] = useState('');
  const [unread, setUnread] = useState('');
  useEffect(() => setTyped(limit === undefined ? '' : plain(limit, 2)), [limit]);
  const take = (text: string) => {
    const reading = parseFigure(text.replace(/[$]/g, ''), 'count', 'metric');
    setTyped(text);
    setUnread(reading.kind === 'unreadable' ? reading.say : '');
    if (reading.kind === 'empty') setLimit(name, undefined);
    if (reading.kind === 'value') setLimit(name, reading.value || undefined);
  };
  return (
    <span class="aside limit">
      <label>
        <span>
          my limit<span class="visually-hidden">, {label}</span> {before}
        </span>
        <input
          class="blank"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={unread ? 'true' : undefined}
          onChange={(event) => take(event.currentTarget.value)}
        />
        {after ? <span>{after}</span> : null}
      </label>
      {unread ? <span class="field-message look">{unread}</span> : null}
    </span>
  );
}
