import { asCell, asRow } from '../shared/table-roles.ts';

/** Across the table, before the first task on mains: the work stops here until this is read. */
export function StopWorkRow({ say }: { say: string }) {
  return (
    <tr class="stop-work" {...asRow}>
      <td {...asCell} colSpan={3}>
        <p class="caution">
          <b>Mains.</b> {say}
        </p>
      </td>
    </tr>
  );
}
