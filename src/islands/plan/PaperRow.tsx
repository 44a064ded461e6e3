import type { ComponentChildren } from 'preact';
import { asCell, asRow } from '../shared/table-roles.ts';

/** On paper only: what a row has to say beyond its figures, across the whole table instead of in a narrow column. */
export function PaperRow({ across, children }: { across: number; children: ComponentChildren }) {
  return (
    <tr class="paper-row" {...asRow}>
      <td {...asCell} colSpan={across}>
        {children}
      </td>
    </tr>
  );
}
