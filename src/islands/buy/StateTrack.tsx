import type { PurchaseState } from '../../calc/core/purchase.ts';
import { stepOf, track } from './states.ts';

interface Props {
  readonly part: string;
  readonly name: string;
  readonly state: PurchaseState;
  readonly onState: (state: PurchaseState) => void;
}

/** How far a line has come, as a mark on a scribed line; any step can be chosen, because owners also step back. */
export function StateTrack({ part, name, state, onState }: Props) {
  const now = stepOf(state);
  return (
    <fieldset class={`state-track at-${now}`}>
      <legend class="visually-hidden">Where it stands: {name}</legend>
      {track.map((step, at) => (
        <label key={step} class={at <= now ? 'is-passed' : undefined}>
          <input
            type="radio"
            name={`state-${part}`}
            value={step}
            checked={at === now}
            onChange={() => onState(step)}
          />
          <span>{step}</span>
        </label>
      ))}
    </fieldset>
  );
}
