import { useId, useState } from 'preact/hooks';
import type { Purchase } from '../../calc/core/purchase.ts';
import type { BillLine } from '../../calc/evaluate.ts';
import { plain } from '../shared/format.ts';
import { NotKept } from '../shared/NotKept.tsx';
import { parseAmount } from './amount.ts';
import { draftOf, keepDraft } from './drafts.ts';

interface Props {
  readonly line: BillLine;
  readonly known: Purchase | undefined;
  readonly sellers: readonly string[];
  /** Codes the price may be in: dollars, and the owner's own where there is one. */
  readonly currencies: readonly string[];
  readonly onKeep: (purchase: Purchase) => void;
  readonly onTakeAway: () => void;
  readonly onCancel: () => void;
}

interface Typed {
  readonly price: string;
  readonly per: NonNullable<Purchase['per']>;
  readonly currency: string;
  readonly qty: string;
  readonly seller: string;
  readonly date: string;
  readonly note: string;
}

const typedOf = (known: Purchase | undefined, currencies: readonly string[]): Typed => ({
  price: known?.price ?? '',
  per: known?.per ?? 'unit',
  currency: known?.currency ?? currencies[0] ?? 'USD',
  qty: known?.qty === undefined ? '' : String(known.qty),
  seller: known?.seller ?? '',
  date: known?.date ?? '',
  note: known?.note ?? '',
});

type Faults = Readonly<Partial<Record<'price' | 'qty', string>>>;

/** What keeps the form from being kept, by field. */
export function faultsOf({ price, qty }: Pick<Typed, 'price' | 'qty'>): Faults {
  const amount = parseAmount(price);
  const many = parseAmount(qty);
  const count = many.kind === 'amount' ? Number(many.text) : undefined;
  return {
    ...(amount.kind === 'unreadable' ? { price: amount.say } : {}),
    ...(many.kind === 'unreadable' || count === 0 || (count ?? 0) > 1e6
      ? { qty: 'Type how many, as a figure above zero.' }
      : {}),
  };
}

/** The purchase that the form says; empty fields are left out. */
function purchaseOf(typed: Typed, known: Purchase | undefined): Purchase {
  const [price, qty] = [parseAmount(typed.price), parseAmount(typed.qty)];
  const [seller, note] = [typed.seller.trim(), typed.note.trim()];
  const isPriced = price.kind === 'amount';
  const currency = (isPriced && price.currency) || typed.currency;
  const state = known && known.state !== 'need' && known.state !== 'returned' ? known.state : 'quoted';
  return {
    state: isPriced ? state : (known?.state ?? 'need'),
    ...(isPriced ? { price: price.text, per: typed.per } : {}),
    ...(isPriced && currency !== 'USD' ? { currency } : {}),
    ...(qty.kind === 'amount' ? { qty: Number(qty.text) } : {}),
    ...(seller ? { seller } : {}),
    ...(typed.date ? { date: typed.date } : {}),
    ...(note ? { note } : {}),
  };
}

/** Price, quantity, shop, day and a note for one line. Nothing is kept until "Keep". */
export function QuoteForm({ line, known, sellers, currencies, onKeep, onTakeAway, onCancel }: Props) {
  const [typed, setTyped] = useState(() => draftOf<Typed>(line.part) ?? typedOf(known, currencies));
  const [shown, setShown] = useState(false);
  const id = useId();
  const faults = shown ? faultsOf(typed) : {};
  const set = (field: keyof Typed) => (event: { currentTarget: { value: string } }) => {
    const next = { ...typed, [field]: event.currentTarget.value };
    keepDraft(line.part, next);
    setTyped(next);
  };
  const keep = (event: Event) => {
    event.preventDefault();
    setShown(true);
    if (Object.keys(faultsOf(typed)).length === 0) onKeep(purchaseOf(typed, known));
  };
  const unit = line.unit === 'each' ? 'one' : `one ${line.unit}`;
  return (
    <form class="quote-form no-print" onSubmit={keep} aria-label={`Quote: ${line.name}`} noValidate>
      <div class="field">
        <label for={`${id}-price`}>Your price, before carriage and tax</label>
        <span class="field-cells">
          <select aria-label="Currency" value={typed.currency} onChange={set('currency')}>
            {currencies.map((code) => (
              <option key={code}>{code}</option>
            ))}
          </select>
          <input
            id={`${id}-price`}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={typed.price}
            aria-invalid={faults.price ? 'true' : undefined}
            aria-describedby={faults.price ? `${id}-price-fault` : undefined}
            onInput={set('price')}
          />
          <select aria-label="The price is for" value={typed.per} onChange={set('per')}>
            <option value="unit">for {unit}</option>
            {line.pack > 1 ? <option value="pack">for a pack of {line.pack}</option> : null}
            <option value="line">for all of them</option>
          </select>
        </span>
        <Fault id={`${id}-price-fault`} say={faults.price} />
      </div>
      <div class="field">
        <label for={`${id}-qty`}>How many</label>
        <span class="field-cells">
          <input
            id={`${id}-qty`}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            placeholder={plain(line.toHave, 2)}
            value={typed.qty}
            aria-invalid={faults.qty ? 'true' : undefined}
            aria-describedby={`${id}-qty-hint${faults.qty ? ` ${id}-qty-fault` : ''}`}
            onInput={set('qty')}
          />
        </span>
        <p class="field-hint" id={`${id}-qty-hint`}>
          Empty: the {plain(line.toHave, 2)} that the plan asks for.
        </p>
        <Fault id={`${id}-qty-fault`} say={faults.qty} />
      </div>
      <div class="field">
        <label for={`${id}-seller`}>Shop</label>
        <input
          id={`${id}-seller`}
          type="text"
          list={`${id}-sellers`}
          maxLength={80}
          value={typed.seller}
          onInput={set('seller')}
        />
        <datalist id={`${id}-sellers`}>
          {sellers.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      <div class="field">
        <label for={`${id}-date`}>Day</label>
        <input id={`${id}-date`} type="date" value={typed.date} onInput={set('date')} />
      </div>
      <div class="field wide">
        <label for={`${id}-note`}>Note</label>
        <input id={`${id}-note`} type="text" maxLength={500} value={typed.note} onInput={set('note')} />
      </div>
      <p class="button-row wide">
        <button type="submit" class="button primary">
          Keep
        </button>
        <button type="button" class="button" onClick={onCancel}>
          Leave as it was
        </button>
        {known ? (
          <button type="button" class="link-button" onClick={onTakeAway}>
            Take it all away
          </button>
        ) : null}
        <span class="quiet small">
          Ours stays beside it, struck out. It is kept on this device, and in a link only when you tick it.
        </span>
      </p>
    </form>
  );
}

function Fault({ id, say }: { id: string; say: string | undefined }) {
  return (
    <div id={id} role="status">
      {say ? (
        <p class="field-message stop">
          <NotKept say={say} />
        </p>
      ) : null}
    </div>
  );
}
