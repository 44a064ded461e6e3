import { useId } from 'preact/hooks';
import { swapped } from './words.ts';

interface Props {
  readonly all: readonly { readonly id: string; readonly name: string }[];
  readonly shown: readonly string[];
  readonly onShown: (shown: string[]) => void;
}

/** On a phone: which two stand side by side. */
export function Pickers({ all, shown, onShown }: Props) {
  const id = useId();
  return (
    <div class="beside-pickers no-print">
      {shown.map((each, place) => (
        <div key={place} class="field">
          <label for={`${id}-${place}`}>{place === 0 ? 'Left' : 'Right'}</label>
          <select
            id={`${id}-${place}`}
            value={each}
            onChange={(event) => onShown(swapped(shown, place, event.currentTarget.value))}
          >
            {all.map((column) => (
              <option key={column.id} value={column.id}>
                {column.name}
              </option>
            ))}
          </select>
        </div>
      ))}
    </div>
  );
}
