import type { FigureInput } from '../../calc/working-figures/figure.ts';

interface Props {
  readonly figure: string;
  readonly input: FigureInput;
  readonly typed: string;
  /** The value that holds, as it is typed: where the slider stands. */
  readonly held: string;
  readonly fault: string;
  readonly own: boolean;
  readonly onType: (typed: string) => void;
}

/** One value to move: a field, and a slider bound to it. */
export function InputRow({ figure, input, typed, held, fault, own, onType }: Props) {
  const { id, label, written, low, high, step } = input;
  const name = `working-${figure}-${id}`;
  return (
    <div class="field working-input">
      <label for={name}>{label}</label>
      <span class="field-cells">
        <input
          id={name}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={fault || own ? `${name}-note` : undefined}
          value={typed}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        {written.unit ? <span class="field-unit">{written.unit}</span> : null}
      </span>
      <input
        type="range"
        aria-label={`${label}, slider`}
        aria-valuetext={`${held} ${written.unit}`.trim()}
        min={low}
        max={high}
        step={step}
        value={held}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {fault || own ? (
        <p id={`${name}-note`} class={fault ? 'field-message stop' : 'working-own'}>
          {fault || 'from your path'}
        </p>
      ) : null}
    </div>
  );
}
