import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { MeasuredReading } from '../../calc/working.ts';
import { $units } from '../preferences.ts';
import { setReading } from '../progress.ts';
import type { Units } from '../shared/format.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { parseReading, readingFigure, readingUnit, saidReading } from './reading-figure.ts';

/** "at most 0.005 mm", "0.01 to 0.03 mm", "note it down". */
export function limitWords({ atMost, atLeast, good, show }: MeasuredReading, units: Units): string {
  const said = (value: number): string => saidReading(value, show, units);
  const fine = good === undefined ? '' : `; ${said(good)} is as good as it gets by hand`;
  if (atMost !== undefined && atLeast !== undefined) return `${said(atLeast)} to ${said(atMost)}${fine}`;
  if (atMost !== undefined) return `at most ${said(atMost)}${fine}`;
  if (atLeast !== undefined) return `at least ${said(atLeast)}${fine}`;
  return 'no limit: something later is compared with it';
}

const JUDGED = {
  good: ['ok', 'good'],
  within: ['ok', 'within the limit'],
  outside: ['stop', 'outside the limit'],
  noted: ['ok', 'noted'],
} as const;

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
  const [typed, setTyped] = useState('');
  const [fault, setFault] = useState('');
  useEffect(() => setTyped(known === undefined ? '' : readingFigure(known, show, units)), [known, units]);
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
        <span class="field-unit">{readingUnit(show, units) || 'count'}</span>
      </span>
      <span id={note} role="status" class="field-message stop">
        {fault}
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
  const [mark, word] = worst ? JUDGED[worst] : ['not-yet', 'not yet'];
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
          {limitWords(reading, units)}
        </span>
        <span role="status">
          <ResultMark result={mark as 'ok'} word={word} />
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
