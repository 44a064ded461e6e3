import { Pickers } from '../../beside/Pickers.tsx';
import { MOST_COLUMNS } from '../../beside/words.ts';
import { counted } from '../../shared/format.ts';
import { type Column, ticked } from './columns.ts';

interface Props {
  readonly all: readonly Column[];
  readonly shown: readonly string[];
  readonly narrow: boolean;
  readonly onShown: (shown: readonly string[]) => void;
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
