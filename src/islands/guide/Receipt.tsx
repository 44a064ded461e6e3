import { useStore } from '@nanostores/preact';
import { decisionById } from '../../calc/guide.ts';
import type { Moved, Receipt as ReceiptData } from '../receipts.ts';
import { sayAnswer } from '../receipts.ts';
import { counted, hoursDifference, listed, moneyDifference } from '../shared/format.ts';
import { $receipts, undo } from '../stores.ts';

const nameOf = (id: string): string => decisionById(id)?.name ?? id;

/** "It also sets cable: screened cable." At most three are named. */
function sayAlso({ alsoSet }: Moved): string {
  if (alsoSet.length === 0) return '';
  const named = alsoSet.slice(0, 3).map(({ decision, options }) => {
    const about = decisionById(decision);
    return about ? `${about.name.toLowerCase()} (${sayAnswer(about, options)})` : decision;
  });
  const more = alsoSet.length > 3 ? [`${alsoSet.length - 3} more`] : [];
  return `Until you answer them, it also sets ${listed([...named, ...more])}.`;
}

function sayQuestions({ opened, closed, clashes }: Moved): string {
  const said = [
    opened.length > 0 ? `${counted(opened.length, 'more question')} to ask` : '',
    closed.length > 0 ? `${counted(closed.length, 'question')} fewer to ask` : '',
    clashes.length > 0 ? `please decide again: ${listed(clashes.map(nameOf))}` : '',
  ].filter(Boolean);
  const text = said.join('; ');
  return text ? `${text[0]?.toUpperCase()}${text.slice(1)}.` : '';
}

/** What the change moved, in one or two sentences: "Typically $630 less and 9 h less." */
export function sayMoved(moved: Moved): string {
  const money = moneyDifference(moved.moneyAfter - moved.moneyBefore);
  const hours = hoursDifference(moved.hoursAfter - moved.hoursBefore);
  return [`Typically ${money} and ${hours}.`, sayAlso(moved), sayQuestions(moved)].filter(Boolean).join(' ');
}

function Words({ receipt }: { receipt: ReceiptData }) {
  const { name, saidNow, moved, lost } = receipt;
  const waiting = lost ? 'What it moves could not be worked out.' : 'Working out what it moves …';
  return (
    <p>
      <b>
        {name}: {saidNow}.
      </b>{' '}
      {moved ? sayMoved(moved) : waiting}{' '}
      <button type="button" class="link-button" onClick={undo}>
        Undo<span class="visually-hidden">: {name}</span>
      </button>
    </p>
  );
}

/** One line after each change: what moved, by how much, and a way to take it back. */
export function Receipt() {
  const [newest] = useStore($receipts);
  return (
    <div class="receipt-place">
      <div role="status">
        {newest ? (
          <div class="receipt">
            <h2>What just moved</h2>
            <Words receipt={newest} />
          </div>
        ) : null}
      </div>
    </div>
  );
}
