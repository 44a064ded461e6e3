import { asColumnHead, asRow } from './table-roles.ts';

/** The head of a table: one cell for each name. */
export function ColumnHeads({ heads }: { heads: readonly string[] }) {
  return (
    <thead>
      <tr {...asRow}>
        {heads.map((head) => (
          <th key={head} {...asColumnHead}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
  );
}
