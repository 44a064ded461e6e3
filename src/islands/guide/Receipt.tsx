import { useStore } from '@nanostores/preact';
import type { Receipt as ReceiptData } from '../receipts.ts';
import { $receipts, undo } from '../stores.ts';
import { sayReceipt } from './receipt-words.ts';
import { useTold } from './use-told.ts';

export function Undo({ name }: { name: string }) {
  return (
    <button type="button" class="link-button" onClick={undo}>
      Undo<span class="visually-hidden">: {name}</span>
    </button>
  );
}

function Words({ receipt }: { receipt: ReceiptData }) {
  const { name, saidNow } = receipt;
  return (
    <p>
      <b>
        {name}: {saidNow}.
      </b>{' '}
      {sayReceipt(receipt, useTold(receipt))} <Undo name={name} />
    </p>
  );
}

/** A line after each change: what moved, by how much, and a way to take it back. */
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
