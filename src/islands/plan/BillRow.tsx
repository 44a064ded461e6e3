import type { BillLine } from '../../calc/evaluate.ts';
import { parts } from '../../content/told/parts.ts';
import { plain } from '../shared/format.ts';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { spanText } from '../shared/span.ts';
import { asCell, asRow, asRowHead } from '../shared/table-roles.ts';
import { Ticked } from './Glyphs.tsx';
import { PaperRow } from './PaperRow.tsx';
import { priceRange } from './words.ts';

function tag({ owned, credit, yearly, shopTool }: BillLine): string {
  if (owned) return 'already there';
  if (credit) return 'comes back: taken off the total';
  if (yearly) return 'paid every year, in no total';
  return shopTool ? 'shop tool' : '';
}

function Name({ line }: { line: BillLine }) {
  const said = tag(line);
  return (
    <Ticked>
      {line.owned ? <s>{line.name}</s> : line.name}
      {said ? <b class="bill-tag"> {said}</b> : null}
      <span class="task-note">{line.note}</span>
      <span class="task-note">Why: {line.reasons.join('; ')}.</span>
      <ReadAbout kind="parts" told={parts} id={line.part} room={line.subsystem} />
    </Ticked>
  );
}

const days = ({ leadDays: [low, , high], ship }: BillLine): string =>
  high === 0 ? 'none' : `${spanText(plain(low), plain(high))}${ship === 'freight' ? ', by freight' : ''}`;

function arrival({ inspect, spares }: BillLine): string {
  return [inspect, spares ? `Spare: ${spares}` : undefined].filter(Boolean).join(' ');
}

function NotesOnPaper({ line }: { line: BillLine }) {
  const told = arrival(line);
  return (
    <PaperRow across={6}>
      {line.note} Why: {line.reasons.join('; ')}.{told ? ` On arrival: ${told}` : ''}
    </PaperRow>
  );
}

/** One line of the parts list; what the owner has stays in it, struck out and said in words. */
export function BillRow({ line }: { line: BillLine }) {
  return (
    <>
      <tr {...asRow} class={line.owned ? 'is-owned' : undefined} id={`part-${line.part}`}>
        <th {...asRowHead}>
          <Name line={line} />
        </th>
        <td {...asCell} data-label="Quantity">
          {plain(line.qty, 1)} {line.unit === 'each' ? '' : line.unit}
        </td>
        <td {...asCell} data-label="Each" class="number">
          {priceRange(line.each)}
        </td>
        <td {...asCell} data-label="Line" class="number">
          {line.owned ? '$0' : priceRange(line.line)}
        </td>
        <td {...asCell} data-label="Days" class="number">
          {days(line)}
        </td>
        <td {...asCell} data-label="On arrival" class="small">
          {arrival(line)}
        </td>
      </tr>
      <NotesOnPaper line={line} />
    </>
  );
}
