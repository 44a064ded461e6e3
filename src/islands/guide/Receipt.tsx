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

/** In words, said aloud once: not before everything is known. */
function Words({ receipt }: { receipt: ReceiptData }) {
  const told = useTold(receipt);
  const said = `${receipt.name}: ${receipt.saidNow}.`;
  const words = (
    <>
      <b>{said}</b> {sayReceipt(receipt, told)}
    </>
  );
  const known = receipt.lost || told === 'lost' || (told && receipt.moved);
  return (
    <>
      {known ? null : words}
      <span role="status">{known ? words : null}</span>
    </>
  );
}

/** A line after each change: what moved, by how much, and a way to take it back. */
export function Receipt() {
  const [newest] = useStore($receipts);
  return (
    <div class="receipt-place">
      {newest ? (
        <div class="receipt">
          <h2>What just moved</h2>
          <p>
            <Words receipt={newest} /> <Undo name={newest.name} />
          </p>
        </div>
      ) : null}
    </div>
  );
}
