import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { parseFigure } from '../lathe/parse.ts';
import { $units } from '../preferences.ts';
import { lengthFigure } from '../shared/format.ts';

interface Props {
  readonly id: string;
  readonly label: string;
  /** Metres; undefined: not asked for. */
  readonly value: number | undefined;
  /** Lengths that make sense here, metres. */
  readonly from: number;
  readonly to: number;
  readonly take: (metres: number | undefined) => void;
}

const same = (a: number | undefined, b: number | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && Math.abs(a - b) <= 1e-4 * b);

/** A length that a way has to keep to. What cannot be used stays in the field, with the reason beside it. */
export function LengthField({ id, label, value, from, to, take }: Props) {
  const units = useStore($units);
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState('');
  const unit = units === 'inch' ? 'in' : 'mm';
  useLayoutEffect(() => {
    const reading = parseFigure(typed, 'length', units);
    if (value === undefined && said !== '') return;
    if (!same(reading.kind === 'value' ? reading.value : undefined, value))
      setTyped(value === undefined ? '' : lengthFigure(value, units));
  }, [value, units]);
  const read = (text: string) => {
    const reading = parseFigure(text, 'length', units);
    const outside = reading.kind === 'value' && (reading.value < from || reading.value > to);
    setTyped(text);
    if (reading.kind === 'unreadable') setSaid(`${reading.say} Until then this is not asked for.`);
    else if (outside)
      setSaid(
        `We expect ${lengthFigure(from, units)} to ${lengthFigure(to, units)} ${unit}. Until then this is not asked for.`,
      );
    else setSaid('');
    take(reading.kind === 'value' && !outside ? reading.value : undefined);
  };
  return (
    <div class={said ? 'field look' : 'field'}>
      <label for={id}>{label}</label>
      <span class="field-cells">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={said ? 'true' : undefined}
          aria-describedby={said ? `${id}-said` : undefined}
          onChange={(event) => read(event.currentTarget.value)}
        />
        <span class="field-unit">{unit}</span>
      </span>
      {said ? (
        <p class="field-message look" id={`${id}-said`}>
          {said}
        </p>
      ) : null}
    </div>
  );
}
