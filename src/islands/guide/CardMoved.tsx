import { useStore } from '@nanostores/preact';
import type { Receipt } from '../receipts.ts';
import { plain, roundHours, roundMoney } from '../shared/format.ts';
import { questionPlace } from '../shared/places.ts';
import { $receipts } from '../stores.ts';
import { QuestionLink } from './QuestionLink.tsx';

const SHOWN = 5;

const signed = (n: number, text: string): string => (n > 0 ? `+${text}` : n < 0 ? `−${text}` : '0');

const moneyBy = (n: number): string => signed(roundMoney(n), `$${plain(Math.abs(roundMoney(n)))}`);
const hoursBy = (n: number): string => `${signed(roundHours(n), plain(Math.abs(roundHours(n)), 1))} h`;

function Row({ receipt: { decision, name, moved, lost } }: { receipt: Receipt }) {
  const waiting = lost ? '?' : '…';
  return (
    <tr>
      <th scope="row">
        {decision ? <QuestionLink href={questionPlace(decision)}>{name}</QuestionLink> : name}
      </th>
      <td class="number">{moved ? moneyBy(moved.moneyAfter - moved.moneyBefore) : waiting}</td>
      <td class="number">{moved ? hoursBy(moved.hoursAfter - moved.hoursBefore) : waiting}</td>
    </tr>
  );
}

/** The last changes and what each of them moved. */
export function CardMoved() {
  const receipts = useStore($receipts);
  if (receipts.length === 0) return null;
  return (
    <section class="card-section">
      <h3>What moved it</h3>
      <table class="moved">
        <thead>
          <tr>
            <th scope="col">Change</th>
            <th scope="col" class="number">
              Money
            </th>
            <th scope="col" class="number">
              Hours
            </th>
          </tr>
        </thead>
        <tbody>
          {receipts.slice(0, SHOWN).map((receipt) => (
            <Row key={receipt.number} receipt={receipt} />
          ))}
        </tbody>
      </table>
      <p class="quiet">Typical change at each answer, newest first.</p>
    </section>
  );
}
