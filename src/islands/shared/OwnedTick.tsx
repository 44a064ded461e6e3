import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { BillLine } from '../../calc/evaluate.ts';
import { $path, setOwned } from '../stores.ts';

/** Says whether a thing is in the drawer already; the words beside the box are the page's. */
export function OwnedTick({ line, children }: { line: BillLine; children: ComponentChildren }) {
  const owned = useStore($path).owned.includes(line.part);
  return (
    <label class="choice">
      <input
        type="checkbox"
        checked={owned}
        onChange={(event) => setOwned(line.part, event.currentTarget.checked, line.name)}
      />
      <span>{children}</span>
    </label>
  );
}
