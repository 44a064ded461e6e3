import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { MeasuredReading } from '../../calc/working.ts';
import { $units } from '../preferences.ts';
import { setReading } from '../progress.ts';
import { NotKept } from '../shared/NotKept.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import {
  judgementText,
  readingFigure,
  readingLimit,
  readingUnit,
  spokenReadingUnit,
} from '../shared/reading-text.ts';
import { useFieldText } from '../shared/use-field-text.ts';
import { parseReading } from './parse-reading.ts';

const MARKS = { good: 'ok', within: 'ok', outside: 'stop', noted: 'ok' } as const;

interface PlaceProps {
  readonly reading: MeasuredReading;
  readonly at: number;
  readonly places: number;
}

/** The values with one set or taken out; the places keep their order, an empty place in between is closed up. */
function withValue(values: readonly number[], at: number, value: number | undefined): readonly number[] {
  if (value === undefined) return values.filter((_, place) => place !== at);
  const all = [...values];
  all[Math.min(at, values.length)] = value;
  return all;
}

function Place({ reading, at, places }: PlaceProps) {
  const units = useStore($units);
  const { id, what, show, values } = reading;
  const known = values[at];
  const [typed, setTyped] = useFieldText(known === undefined ? '' : readingFigure(known, show, units));
  const [fault, setFault] = useState('');
  const take = (text: string) => {
    const read = parseReading(text, show, units);
    setFault(read.kind === 'unreadable' ? read.say : '');
    if (read.kind === 'empty') setReading(id, withValue(values, at, undefined));
    if (read.kind === 'value') setReading(id, withValue(values, at, read.value));
  };
  const note = `reading-${id}-${at}-note`;
  return (
    <span class="reading-place">
      <span class="field-cells">
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-label={places > 1 ? `${what}, place ${at + 1}` : what}
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={`reading-${id}-limit ${fault ? note : ''}`.trim()}
          value={typed}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <span class="field-unit">
          <span aria-hidden="true">{readingUnit(show, units) || 'count'}</span>
          <span class="visually-hidden">{spokenReadingUnit(show, units) || 'count'}</span>
        </span>
      </span>
      <span id={note} role="status" class="field-message stop">
        {fault ? <NotKept say={fault} /> : null}
      </span>
    </span>
  );
}

interface Props {
  readonly reading: MeasuredReading;
  readonly nameOf: (id: string) => string | undefined;
}

/** What is measured in a test: a field for each place, the limit beside it, and where a bad one points. */
export function ReadingField({ reading, nameOf }: Props) {
  const units = useStore($units);
  const { id, what, where, worst, points, values } = reading;
  const places = Math.max(reading.places ?? 1, values.length);
  return (
    <div class="reading">
      <p class="reading-what">
        <b>{what}</b> {where ? <span class="quiet">{where}</span> : null}
      </p>
      <div class="reading-line">
        {Array.from({ length: places }, (_, at) => (
          <Place key={at} reading={reading} at={at} places={places} />
        ))}
        <span id={`reading-${id}-limit`} class="small quiet">
          {readingLimit(reading, units) || 'no limit: something later is compared with it'}
        </span>
        <span role="status">
          <ResultMark
            result={worst ? MARKS[worst] : 'not-yet'}
            word={worst ? judgementText(worst) : 'not yet'}
          />
        </span>
      </div>
      {worst === 'outside' && points ? (
        <p class="small">
          {points.say}
          {points.tasks.length > 0
            ? ` Look at: ${points.tasks.flatMap((task) => nameOf(task) ?? []).join('; ')}.`
            : ''}
        </p>
      ) : null}
    </div>
  );
}
