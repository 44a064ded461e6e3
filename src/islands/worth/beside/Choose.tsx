import { useId } from 'preact/hooks';
import { counted } from '../../shared/format.ts';
import { type Column, MOST_COLUMNS, swapped, ticked } from './columns.ts';

interface Props {
  readonly all: readonly Column[];
  readonly shown: readonly string[];
  readonly narrow: boolean;
  readonly onShown: (shown: readonly string[]) => void;
}

function Pickers({ all, shown, onShown }: Omit<Props, 'narrow'>) {
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

function Ticks({ all, shown, onShown }: Omit<Props, 'narrow'>) {
  const order = all.map(({ id }) => id);
  const full = shown.length >= MOST_COLUMNS;
  return (
    <details class="no-print">
      <summary>Change the columns</summary>
      <fieldset>
        <legend>
          {counted(shown.length, 'column')} of {MOST_COLUMNS} at most
        </legend>
        <p class="field-hint" role="status">
          {full ? 'Take one away before you add another.' : ''}
        </p>
        <div class="beside-ticks">
          {all.map(({ id, name }) => {
            const on = shown.includes(id);
            return (
              <label key={id} class="choice">
                <input
                  type="checkbox"
                  checked={on}
                  disabled={on ? shown.length === 1 : full}
                  onChange={(event) => onShown(ticked(order, shown, id, event.currentTarget.checked))}
                />
                <span>{name}</span>
              </label>
            );
          })}
        </div>
      </fieldset>
    </details>
  );
}

/** Which columns stand side by side: by tick on a sheet, by two pickers on a phone. */
export function Choose({ narrow, ...props }: Props) {
  return narrow ? <Pickers {...props} /> : <Ticks {...props} />;
}
