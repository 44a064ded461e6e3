import { useStore } from '@nanostores/preact';
import type { WhyDiffer } from '../../calc/comparing.ts';
import { $units } from '../preferences.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { exactly } from './exactly.ts';
import { keyOfPiece, sayPiece } from './piece-words.ts';

interface Props {
  readonly why: WhyDiffer;
  readonly letters: readonly [a: string, b: string];
}

/** The same as figures, and also what moves nothing: every difference with its share in money and in hours. */
export function ShareTable({ why, letters: [a, b] }: Props) {
  const units = useStore($units);
  const shares = why.shares.toSorted((p, q) => Math.abs(q.money) - Math.abs(p.money));
  return (
    <details>
      <summary>The same as a table</summary>
      <table class="table-stack share-table" {...asTable} aria-label={`Why ${a} and ${b} differ`}>
        <ColumnHeads heads={['Difference', `${a} says`, `${b} says`, 'Money', 'Hours']} />
        <tbody>
          {shares.map((share) => {
            const said = sayPiece(share.piece, units);
            return (
              <tr key={keyOfPiece(share.piece)} {...asRow}>
                <th {...asRowHead}>{said.name}</th>
                <td {...asCell} data-label={`${a} says`}>
                  {said.a}
                </td>
                <td {...asCell} data-label={`${b} says`}>
                  {said.b}
                </td>
                <td {...asCell} data-label="Money" class="number">
                  {exactly('money', share.money, true)}
                </td>
                <td {...asCell} data-label="Hours" class="number">
                  {exactly('hours', share.hours, true)}
                </td>
              </tr>
            );
          })}
        </tbody>
        <tfoot>
          <tr {...asRow}>
            <th {...asRowHead}>
              {a} less {b}, typical
            </th>
            <td {...asCell} data-label={`${a} is`}>
              {exactly('money', why.money.a)}, {exactly('hours', why.hours.a)}
            </td>
            <td {...asCell} data-label={`${b} is`}>
              {exactly('money', why.money.b)}, {exactly('hours', why.hours.b)}
            </td>
            <td {...asCell} data-label="Money" class="number">
              <b>{exactly('money', why.money.difference, true)}</b>
            </td>
            <td {...asCell} data-label="Hours" class="number">
              <b>{exactly('hours', why.hours.difference, true)}</b>
            </td>
          </tr>
        </tfoot>
      </table>
    </details>
  );
}
