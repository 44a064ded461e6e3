import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { PurchaseState } from '../../calc/core/purchase.ts';
import type { BillLine, Report } from '../../calc/evaluate.ts';
import { parts } from '../../content/told/parts.ts';
import { priceRange } from '../plan/words.ts';
import { setPurchase, setState } from '../purchases.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { exactBoth, exactText } from '../shared/format.ts';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import { $path, setOwned } from '../stores.ts';
import { today } from './day.ts';
import { dropDraft, hasDraft } from './drafts.ts';
import { follow } from './follow.ts';
import { QuoteForm } from './QuoteForm.tsx';
import { StateTrack } from './StateTrack.tsx';
import { isInHand, nextActions } from './states.ts';
import { isExact, neededFor, orderWords, quantityWords, reasonWords } from './words.ts';

function Price({ line }: { line: BillLine }) {
  const { purchase, state } = line;
  if (state === 'have') return <span class="buy-price quiet">in the drawer</span>;
  if (!purchase?.goods)
    return (
      <span class="buy-price">
        <DimensionLine text={priceRange(line.line)} length={120} />
      </span>
    );
  return (
    <span class="buy-price">
      <s class="quiet">
        <span class="visually-hidden">our range for one </span>
        {priceRange(line.each)}
      </s>{' '}
      <b>{exactBoth(purchase.goods)}</b>
      {isExact(line.line) ? null : (
        <span class="small quiet"> and {priceRange(line.line)} with the rest</span>
      )}
    </span>
  );
}

const ASKS = {
  price: 'No price yet, so our range still counts. What did it cost?',
  number: 'The price cannot be read as an amount, so our range still counts.',
  currency: 'There is no rate for this currency yet, so our range still counts. Type the rate above.',
} as const;

/** What is odd about a price: it is kept and counts, and is asked about. */
function Asked({ line }: { line: BillLine }) {
  const { purchase, each, pack } = line;
  if (!purchase) return null;
  const said = purchase.asks
    ? ASKS[purchase.asks]
    : purchase.outsideBand
      ? `${exactText(purchase.each ?? '0')} for one lies ${purchase.outsideBand} our ${priceRange(each)}. It counts. Is it for one, ${pack > 1 ? `for a pack of ${pack}` : 'or for all'}?`
      : '';
  if (!said) return null;
  return (
    <p class="small buy-asked">
      <ResultMark result="look" /> {said}
    </p>
  );
}

function Inspect({ line }: { line: BillLine }) {
  if (line.state !== 'arrived' || !line.inspect) return null;
  return (
    <p class="buy-inspect">
      <b>Check now, while it can still go back:</b> {line.inspect}
    </p>
  );
}

function useForm(line: BillLine) {
  const [open, setShown] = useState(() => hasDraft(line.part));
  const setOpen = (shown: boolean) => {
    if (!shown) dropDraft(line.part);
    setShown(shown);
  };
  const path = useStore($path);
  const known = path.purchases?.[line.part];
  const sellers = [
    ...new Set([
      ...Object.keys(path.sellers ?? {}),
      ...Object.values(path.purchases ?? {}).flatMap(({ seller }) => seller ?? []),
    ]),
  ].sort();
  const currencies = path.currency ? [path.currency.code, 'USD'] : ['USD'];
  return { open, setOpen, known, sellers, currencies };
}

/** A step along the track; the line may then stand in another group, and the reader goes with it. */
function moveOn(line: BillLine, state: PurchaseState): void {
  follow(line.part);
  setState(line.part, state, line.name, today());
}

function Steps({ line, onQuote }: { line: BillLine; onQuote: () => void }) {
  const state = line.state as PurchaseState;
  const step = (to: PurchaseState) => moveOn(line, to);
  return (
    <div class="buy-steps no-print">
      {nextActions[state].map(({ to, say }) => (
        <button type="button" key={to} class="button small" onClick={() => step(to)}>
          {say}
          <span class="visually-hidden">: {line.name}</span>
        </button>
      ))}
      <button type="button" class="button small" onClick={onQuote}>
        {line.purchase?.goods ? 'Change the price' : 'Add a price'}
        <span class="visually-hidden">: {line.name}</span>
      </button>
      {state === 'need' || state === 'returned' ? (
        <button type="button" class="link-button" onClick={() => setOwned(line.part, true, line.name)}>
          I have it
          <span class="visually-hidden">: {line.name}</span>
        </button>
      ) : null}
    </div>
  );
}

function Owned({ line }: { line: BillLine }) {
  return (
    <div class="buy-steps no-print">
      <button type="button" class="link-button" onClick={() => setOwned(line.part, false, line.name)}>
        I do not have it after all
        <span class="visually-hidden">: {line.name}</span>
      </button>
    </div>
  );
}

function Seller({ line }: { line: BillLine }) {
  const { purchase } = line;
  const known = [purchase?.seller, purchase?.date, purchase?.asTyped, purchase?.note].filter(Boolean);
  return known.length > 0 ? <p class="small quiet buy-known">{known.join(' · ')}</p> : null;
}

/** On paper: where it stands, and blanks for what the shop asks. */
function Blanks({ line }: { line: BillLine }) {
  if (line.state === 'have' || line.state === 'checked') return null;
  return (
    <div class="print-only">
      <div class="buy-blanks">
        <b>{line.state}</b>
        {line.purchase?.goods ? null : <span>price</span>}
        <span>shop</span>
        <span>day</span>
      </div>
    </div>
  );
}

/** One thing to buy: what, how many and why, where it stands, its price, and what to do next. */
export function BuyLine({ line, report }: { line: BillLine; report: Report }) {
  const { open, setOpen, known, sellers, currencies } = useForm(line);
  const close = () => setOpen(false);
  const have = line.state === 'have';
  return (
    <li class={`buy-line${have ? ' is-owned' : ''}`} id={`line-${line.part}`} tabIndex={-1}>
      <div class="buy-head">
        <h3>
          <span class={`buy-tick${isInHand(line.state) ? ' is-done' : ''}`} aria-hidden="true" />
          {line.name}
          {line.size ? <span class="quiet">, {line.size}</span> : null}
        </h3>
        <Price line={line} />
      </div>
      <p class="small">
        <b>{quantityWords(line)}</b> {neededFor(line, report)}.{' '}
        <span class="quiet">Why: {reasonWords(line)}.</span>
        {line.state === 'returned' ? <b> Sent back; needed again.</b> : null}
        <ReadAbout kind="parts" told={parts} id={line.part} room={line.subsystem} />
      </p>
      <Seller line={line} />
      <Blanks line={line} />
      {have ? (
        <Owned line={line} />
      ) : (
        <div class="buy-way">
          <StateTrack
            part={line.part}
            name={line.name}
            state={line.state as PurchaseState}
            onState={(state) => moveOn(line, state)}
          />
          <Steps line={line} onQuote={() => setOpen(!open)} />
        </div>
      )}
      {line.state === 'need' || line.state === 'quoted' || line.state === 'returned' ? (
        <p class="small quiet">{orderWords(line)}</p>
      ) : null}
      <Asked line={line} />
      <Inspect line={line} />
      {open ? (
        <QuoteForm
          line={line}
          known={known}
          sellers={sellers}
          currencies={currencies}
          onKeep={(purchase) => {
            setPurchase(line.part, purchase, line.name);
            close();
          }}
          onTakeAway={() => {
            setPurchase(line.part, undefined, line.name);
            close();
          }}
          onCancel={close}
        />
      ) : null}
    </li>
  );
}
