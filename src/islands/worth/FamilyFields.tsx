import { useId, useLayoutEffect, useState } from 'preact/hooks';
import type { Family } from '../../calc/core/family.ts';
import { removeFamily, setFamily } from '../families.ts';
import { type FamilyFigure, familyFigures, familyFigureText, readFamilyFigure } from './family-figures.ts';

interface Props {
  readonly family: Family;
  readonly at: number;
}

const KEPT = 'What was there before still counts.';

interface TypedProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly unit?: string | undefined;
  readonly known: string;
  /** Takes what was typed; comes back with what is wrong, or with nothing. */
  readonly take: (typed: string) => string;
}

/** A field that keeps what was typed in it; what cannot be used is said beside it. */
function TypedField({ label, hint, unit, known, take }: TypedProps) {
  const [typed, setTyped] = useState(known);
  const [fault, setFault] = useState('');
  const id = useId();
  useLayoutEffect(() => {
    setTyped(known);
    setFault('');
  }, [known]);
  const about = [hint ? `${id}-hint` : '', fault ? `${id}-fault` : ''].join(' ').trim();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <span class="field-cells">
        <input
          id={id}
          type="text"
          inputMode={unit ? 'decimal' : undefined}
          autoComplete="off"
          maxLength={120}
          value={typed}
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={about || undefined}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => setFault(take(event.currentTarget.value))}
        />
        {unit ? <span class="field-unit">{unit}</span> : null}
      </span>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      <div id={`${id}-fault`} role="status">
        {fault ? (
          <p class="field-message stop">
            {fault} {KEPT}
          </p>
        ) : null}
      </div>
    </div>
  );
}

function FigureField({ figure, family, at }: Props & { readonly figure: FamilyFigure }) {
  const known = familyFigureText(figure, family);
  const put = (next: Family): string => {
    const said = familyFigureText(figure, next);
    const name = `${family.name}, ${figure.label.toLowerCase()}`;
    if (said !== known)
      setFamily(at, next, { name, saidBefore: known || 'not said', saidNow: said || 'not said' });
    return '';
  };
  const take = (typed: string): string => {
    const read = readFamilyFigure(figure, typed);
    if (read.kind === 'unreadable') return read.say;
    if (read.kind === 'value') return put(figure.set(family, read.value));
    return put(figure.clear?.(family) ?? family);
  };
  return <TypedField label={figure.label} hint={figure.hint} unit={figure.unit} known={known} take={take} />;
}

function NameField({ family, at }: Props) {
  const take = (typed: string): string => {
    const name = typed.replace(/\s+/g, ' ').trim();
    if (name === '') return 'A name is needed, to tell these parts from others.';
    if (name !== family.name)
      setFamily(at, { ...family, name }, { name: family.name, saidBefore: family.name, saidNow: name });
    return '';
  };
  return <TypedField label="Name of these parts" known={family.name} take={take} />;
}

const SHAPES = {
  '': 'Not said',
  plain: 'Drill, turn, part off',
  shaped: 'Curves, several diameters, threads',
} as const;

function ShapeField({ family, at }: Props) {
  const id = useId();
  const set = (value: string) => {
    const { shape: before = '', ...others } = family;
    const shape = value as keyof typeof SHAPES;
    const said = {
      name: `${family.name}, what they are`,
      saidBefore: SHAPES[before],
      saidNow: SHAPES[shape],
    };
    setFamily(at, shape === '' ? others : { ...others, shape }, said);
  };
  return (
    <div class="field">
      <label for={id}>What they are</label>
      <select id={id} value={family.shape ?? ''} onChange={(event) => set(event.currentTarget.value)}>
        {Object.entries(SHAPES).map(([shape, say]) => (
          <option key={shape} value={shape}>
            {say}
          </option>
        ))}
      </select>
    </div>
  );
}

function Group({ title, which, ...props }: Props & { title: string; which: keyof typeof familyFigures }) {
  return (
    <fieldset class="family-group">
      <legend>{title}</legend>
      {familyFigures[which].map((figure) => (
        <FigureField key={figure.id} figure={figure} {...props} />
      ))}
    </fieldset>
  );
}

/** Everything that is asked about one family of parts. */
export function FamilyFields({ family, at }: Props) {
  return (
    <section class="family" aria-label={`Family ${at + 1}: ${family.name}`}>
      <h3>{family.name}</h3>
      <div class="family-head">
        <NameField family={family} at={at} />
        <ShapeField family={family} at={at} />
      </div>
      <div class="family-groups">
        <Group title="How many" which="many" family={family} at={at} />
        <Group title="By hand, as the lathe is now" which="hand" family={family} at={at} />
        <Group title="By program" which="program" family={family} at={at} />
      </div>
      <button type="button" class="link-button no-print" onClick={() => removeFamily(at)}>
        Take {family.name} away
      </button>
    </section>
  );
}
