import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { ChoiceSwing, Swings, UnknownSwing } from '../../../calc/choosing.ts';
import { Scale } from '../../shared/TrackScale.tsx';
import { trackOf } from '../../shared/track.ts';
import { ChoiceRow } from './ChoiceRow.tsx';
import { choicesIn, KINDS, type Kind, markOfChange, unknownsIn } from './kinds.ts';
import { SwingTables } from './Tables.tsx';
import { UnknownRow } from './UnknownRow.tsx';

/** Rows at first; the rest a press away. */
const FIRST = 12;

function Switch({ kind, onKind }: { kind: Kind; onKind: (kind: Kind) => void }) {
  return (
    <fieldset class="no-print">
      <legend class="visually-hidden">Told in</legend>
      <span class="segments">
        {(Object.keys(KINDS) as Kind[]).map((each) => (
          <label key={each}>
            <input type="radio" name="swing-kind" checked={each === kind} onChange={() => onKind(each)} />
            <span>{KINDS[each].name}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}

interface ListProps<T> {
  readonly all: readonly T[];
  readonly row: (each: T) => ComponentChildren;
  readonly nothing: string;
}

function FirstTwelve<T>({ all, row, nothing }: ListProps<T>) {
  const [open, setOpen] = useState(false);
  if (all.length === 0) return <p>{nothing}</p>;
  return (
    <>
      <ul class="list-plain swing-rows">{(open ? all : all.slice(0, FIRST)).map(row)}</ul>
      {all.length > FIRST ? (
        <button
          type="button"
          class="button small no-print"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {open ? `Only the widest ${FIRST}` : `${all.length - FIRST} more`}
        </button>
      ) : null}
    </>
  );
}

function Choices({ kind, choices }: { kind: Kind; choices: readonly ChoiceSwing[] }) {
  const { shown } = KINDS[kind];
  const ends = choices.flatMap((choice) => {
    const { least, most, blockedLeast, blockedMost } = choice[kind];
    return [least, most, blockedLeast, blockedMost].flatMap((end) => (end ? [shown(end.by)] : []));
  });
  const track = trackOf([0, ...ends]);
  return (
    <section class="swing-chart" aria-labelledby="swing-choices">
      <h3 id="swing-choices">Choices you can still make</h3>
      <p class="small quiet">
        From the allowed answer that takes least to the one that takes most, against your answer now. Solid
        takes more, light takes less; hollow with dashes is blocked by another answer.
      </p>
      <Scale track={track} centre={0} centreName="as now" mark={(by) => markOfChange(kind, by)} />
      <FirstTwelve
        all={choices}
        nothing="No choice moves this."
        row={(choice) => <ChoiceRow key={choice.decision} kind={kind} track={track} choice={choice} />}
      />
    </section>
  );
}

interface UnknownsProps {
  readonly kind: Kind;
  readonly unknowns: readonly UnknownSwing[];
  readonly typical: number;
}

function Unknowns({ kind, unknowns, typical }: UnknownsProps) {
  const { shown, mark, say } = KINDS[kind];
  const track = trackOf(
    [typical, ...unknowns.flatMap((each) => [each[kind].low, each[kind].high])].map(shown),
  );
  return (
    <section class="swing-chart" aria-labelledby="swing-unknowns">
      <h3 id="swing-unknowns">Things yet to be found out</h3>
      <p class="small quiet">
        Nobody chooses these. Each line is the typical total with that one thing at its low and at its high
        end; the dot is where it stands now.
      </p>
      <Scale track={track} centre={shown(typical)} centreName={`typical ${say(typical)}`} mark={mark} />
      <FirstTwelve
        all={unknowns}
        nothing="Nothing that you can still find out moves this."
        row={(unknown) => (
          <UnknownRow key={unknown.id} kind={kind} track={track} typical={typical} unknown={unknown} />
        )}
      />
    </section>
  );
}

/** Two pictures, never one: what can be chosen, and what can only be found out. */
export function WhatSwings({ swings }: { swings: Swings }) {
  const [kind, setKind] = useState<Kind>('money');
  const choices = choicesIn(kind, swings.choices);
  const unknowns = unknownsIn(kind, swings.unknowns);
  return (
    <>
      <Switch kind={kind} onKind={setKind} />
      <p class="print-only">{KINDS[kind].name}</p>
      <div class="grid-halves">
        <Choices key={`choices ${kind}`} kind={kind} choices={choices} />
        <Unknowns key={`unknowns ${kind}`} kind={kind} unknowns={unknowns} typical={swings.now[kind].p50} />
      </div>
      <p>One at a time: combinations can differ. Figures are rounded to two digits.</p>
      <SwingTables kind={kind} choices={choices} unknowns={unknowns} />
    </>
  );
}
