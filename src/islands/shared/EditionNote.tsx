import { useStore } from '@nanostores/preact';
import { currentName } from '../../link/known.ts';
import { $path, setEdition } from '../stores.ts';
import { to } from './places.ts';

/** An old link keeps its figures; this offers today's, and the receipt then says what moved. */
export function EditionNote() {
  const { edition } = useStore($path);
  if (edition === currentName) return null;
  return (
    <div class="notice no-print">
      <p>
        These are the figures of price edition {edition}, as this path was made with it. Edition {currentName}{' '}
        is in use now; <a href={to(`prices/${currentName}/#changes`)}>what changed</a>.
      </p>
      <p class="notice-actions">
        <button type="button" class="button small" onClick={() => setEdition(currentName)}>
          Use edition {currentName}
        </button>
      </p>
    </div>
  );
}
