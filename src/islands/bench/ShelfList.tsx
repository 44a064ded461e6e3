import type { ShelfMark } from '../../calc/core/progress.ts';
import { shelfMarks } from '../../calc/core/progress.ts';
import type { Working } from '../../calc/working.ts';
import { tickShelf } from '../progress.ts';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';

const NAMES: Readonly<Record<ShelfMark, string>> = {
  drawing: 'Drawing',
  made: 'Made',
  measured: 'Measured',
  spare: 'Spare',
  photo: 'Photo',
};

type Line = Working['shelf']['lines'][number];

function Cell({ line, mark }: { line: Line; mark: ShelfMark }) {
  if (!line.asks.includes(mark))
    return (
      <td {...asCell} class="quiet" data-label={NAMES[mark]}>
        –
      </td>
    );
  return (
    <td {...asCell} data-label={NAMES[mark]}>
      <label class="tick">
        <input
          type="checkbox"
          checked={line.ticked.includes(mark)}
          onChange={(event) => tickShelf(line.id, mark, event.currentTarget.checked)}
        />
        <span class="visually-hidden">
          {NAMES[mark]}: {line.what}
        </span>
      </label>
    </td>
  );
}

/** The make-first list: what must lie on the shelf before the lathe comes apart. */
export function ShelfList({ working }: { working: Working }) {
  const { isGate, lines } = working.shelf;
  const fold = useFold();
  if (lines.length === 0) return null;
  const open = lines.filter((line) => line.open.length > 0).length;
  return (
    <section class="rule-section" id="make-first" tabIndex={-1}>
      <h2>Make-first list</h2>
      <p>
        {isGate
          ? 'Only this lathe can make these. Do not take it apart while a box is open.'
          : 'Another lathe can still make what is forgotten; it is quicker to have it here all the same.'}{' '}
        <b>{open === 0 ? 'Every line is ready.' : `${open} of ${lines.length} lines are open.`}</b>
      </p>
      <FoldButton fold={fold} what={counted(lines.length, 'part')} />
      <table
        class={`table-stack shelf-table foldable${fold.shutClass}`}
        {...asTable}
        aria-label="Make-first list"
      >
        <thead>
          <tr {...asRow}>
            <th {...asColumnHead}>Part</th>
            {shelfMarks.map((mark) => (
              <th key={mark} {...asColumnHead}>
                {NAMES[mark]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Folded fold={fold}>
            {lines.map((line) => (
              <tr key={line.id} {...asRow}>
                <th {...asRowHead}>
                  {line.what}{' '}
                  {line.bought ? <span class="quiet small">comes finished; measure it</span> : null}
                </th>
                {shelfMarks.map((mark) => (
                  <Cell key={mark} line={line} mark={mark} />
                ))}
              </tr>
            ))}
          </Folded>
        </tbody>
      </table>
    </section>
  );
}
