import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import type { SizeClass } from '../../calc/core/machine.ts';
import { type Fact, makesSense, sizeNames } from '../../calc/facts.ts';
import { $units } from '../preferences.ts';
import type { Units } from '../shared/format.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { $path, setFact } from '../stores.ts';
import { parseFigure } from './parse.ts';
import { figureOf, saidFigure, sensibleRange, spokenUnit, unitOf } from './units.ts';

interface Said {
  readonly result: 'look' | 'stop';
  readonly say: string;
}

/** What to say about what was typed; nothing when it can be used as it is. */
export function messageFor(fact: Fact, typed: string, units: Units): Said | undefined {
  const reading = parseFigure(typed, fact.show, units);
  if (reading.kind === 'empty') return undefined;
  const instead = fact.typical ? 'the typical figure is used' : 'the plan goes on without it';
  if (reading.kind === 'unreadable')
    return { result: 'stop', say: `${reading.say} ${instead[0]!.toUpperCase()}${instead.slice(1)}.` };
  if (makesSense(fact, reading.value)) return undefined;
  const said = saidFigure(reading.value, fact.show, units);
  return {
    result: 'look',
    say: `${said} lies outside ${sensibleRange(fact, units)}. Is the unit right? Until then ${instead}.`,
  };
}

/** Text of the field: what was typed, until the path says something else. */
function useTyped(fact: Fact, units: Units): [string, (text: string) => void] {
  const given = useStore($path).facts[fact.id];
  const [typed, setTyped] = useState('');
  useLayoutEffect(() => {
    const reading = parseFigure(typed, fact.show, units);
    const value = reading.kind === 'value' ? reading.value : undefined;
    const same =
      given === undefined
        ? value === undefined
        : value !== undefined && Math.abs(value - given) <= given * 1e-4;
    if (!same) setTyped(given === undefined ? '' : figureOf(given, fact.show, units));
  }, [given, units]);
  return [typed, setTyped];
}

function take(fact: Fact, text: string, units: Units): void {
  const reading = parseFigure(text, fact.show, units);
  const value = reading.kind === 'value' ? reading.value : undefined;
  setFact(fact.id, value, value === undefined ? '' : saidFigure(value, fact.show, units));
}

function Typical({ fact, size }: { fact: Fact; size: SizeClass }) {
  const units = useStore($units);
  if (!fact.typical) return <span class="quiet small">empty: we take our own</span>;
  return (
    <span class="quiet small">
      typical {saidFigure(fact.typical[size], fact.show, units)}
      {fact.group === 'lathe' ? <span class="visually-hidden"> for a {sizeNames[size]} lathe</span> : null}
    </span>
  );
}

/** One figure of the lathe: typed in the reader's unit, with the typical one beside it and how to measure it. */
export function FactField({ fact, size }: { fact: Fact; size: SizeClass }) {
  const units = useStore($units);
  const [typed, setTyped] = useTyped(fact, units);
  const [isTyping, setTyping] = useState(false);
  const message = isTyping ? undefined : messageFor(fact, typed, units);
  const [hint, note] = [`${fact.id}-hint`, `${fact.id}-message`];
  const unit = unitOf(fact.show, units);
  return (
    <div class="field fact">
      <label for={fact.id}>{fact.name}</label>
      <p class="field-hint" id={hint}>
        {fact.means}
      </p>
      <div class="fact-line">
        <span class="field-cells">
          <input
            id={fact.id}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={typed}
            aria-describedby={message ? `${hint} ${note}` : hint}
            aria-invalid={message ? 'true' : undefined}
            onInput={(event) => {
              setTyping(true);
              setTyped(event.currentTarget.value);
            }}
            onChange={(event) => {
              setTyping(false);
              take(fact, event.currentTarget.value, units);
            }}
          />
          {unit ? (
            <span class="field-unit">
              <span aria-hidden="true">{unit}</span>
              <span class="visually-hidden">{spokenUnit(fact.show, units)}</span>
            </span>
          ) : null}
        </span>
        <Typical fact={fact} size={size} />
      </div>
      <div id={note} role="status">
        {message ? (
          <p class={`field-message ${message.result}`}>
            <ResultMark result={message.result} /> {message.say}
          </p>
        ) : null}
      </div>
      <details>
        <summary>
          {fact.group === 'own' ? 'How to find it' : 'How to measure it'}
          <span class="visually-hidden">: {fact.name}</span>
        </summary>
        <p class="small">{fact.howToMeasure}</p>
      </details>
    </div>
  );
}
