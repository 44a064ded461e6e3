import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import type { Receipt } from '../receipts.ts';
import { toShown } from '../shared/currency.ts';
import { counted, plain, roundHours, roundMoney, signed } from '../shared/format.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { $receipts } from '../stores.ts';
import { QuestionLink } from './QuestionLink.tsx';
import { Undo } from './Receipt.tsx';
import { sayReceipt } from './receipt-words.ts';
import { useTold } from './use-told.ts';

const SHOWN = 5;

function moneyBy(n: number): string {
  const by = roundMoney(toShown(n));
  return by === 0 ? '0' : `${by > 0 ? '+' : ''}${signed(by)}`;
}

function hoursBy(n: number): string {
  const by = roundHours(n);
  return `${by > 0 ? '+' : ''}${plain(by, 1)} h`;
}

function Name({ receipt: { decision, name } }: { receipt: Receipt }): ComponentChildren {
  return decision ? <QuestionLink href={placeOfQuestion(decision)}>{name}</QuestionLink> : name;
}

function Row({ receipt }: { receipt: Receipt }) {
  const told = useTold(receipt);
  const waiting = told === 'lost' ? '?' : '…';
  const known = told === 'lost' ? undefined : told;
  return (
    <tr>
      <th scope="row">
        <Name receipt={receipt} />
      </th>
      <td class="number">{known ? moneyBy(known.money.p50) : waiting}</td>
      <td class="number">{known ? hoursBy(known.hours.p50) : waiting}</td>
    </tr>
  );
}

function Told({ receipt, isNewest }: { receipt: Receipt; isNewest: boolean }) {
  return (
    <li>
      <b>
        <Name receipt={receipt} />: {receipt.saidNow}.
      </b>{' '}
      {sayReceipt(receipt, useTold(receipt))} {isNewest ? <Undo name={receipt.name} /> : null}
    </li>
  );
}

/** Every change since the page was opened, in words, newest first; the newest can be taken back. */
function History({ receipts }: { receipts: readonly Receipt[] }) {
  return (
    <details class="history">
      <summary>{counted(receipts.length, 'change')} in words</summary>
      <ol class="receipts">
        {receipts.map((receipt, at) => (
          <Told key={receipt.number} receipt={receipt} isNewest={at === 0} />
        ))}
      </ol>
    </details>
  );
}

/** The last changes and what each of them moved, and all of them in words. */
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
      <History receipts={receipts} />
    </section>
  );
}
