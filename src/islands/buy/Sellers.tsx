import { useStore } from '@nanostores/preact';
import { useId, useState } from 'preact/hooks';
import type { Seller } from '../../calc/core/purchase.ts';
import type { Charge, Report, SellerRow } from '../../calc/evaluate.ts';
import { priceRange } from '../plan/words.ts';
import { setSeller } from '../purchases.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { exactText, plain } from '../shared/format.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { $path } from '../stores.ts';
import { parseAmount } from './amount.ts';

const said = (charge: Charge): string =>
  charge.exact === undefined ? priceRange(charge.range) : exactText(charge.exact);

function Cell({ label, charge }: { label: string; charge: Charge }) {
  return (
    <td {...asCell} data-label={label} class="number">
      {said(charge)}
      {charge.how ? <span class="task-note">{charge.how}</span> : null}
    </td>
  );
}

function Order({ row }: { row: SellerRow }) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        {row.seller || 'No shop named'}{' '}
        <span class="task-note">
          {row.state === 'spent' ? 'ordered or paid' : 'quoted'}; {row.lines.length}{' '}
          {row.lines.length === 1 ? 'line' : 'lines'}
          {row.toFreeCarriage ? `; ${exactText(row.toFreeCarriage)} more and carriage is free` : ''}
          {row.taxInside ? `; ${exactText(row.taxInside)} of it is tax` : ''}
        </span>
      </th>
      <td {...asCell} data-label="Goods" class="number">
        {exactText(row.goods)}
      </td>
      <Cell label="Carriage" charge={row.carriage} />
      <Cell label="Tax" charge={row.tax} />
      <Cell label="Duty" charge={row.duty} />
      <td {...asCell} data-label="Together" class="number">
        <b>{said(row.total)}</b>
      </td>
    </tr>
  );
}

const HEADS = ['Order', 'Goods', 'Carriage', 'Tax', 'Duty', 'Together'];

function Tick({ label, on, set }: { label: string; on: boolean; set: (on: boolean) => void }) {
  return (
    <label class="choice">
      <input type="checkbox" checked={on} onChange={(event) => set(event.currentTarget.checked)} />
      <span>{label}</span>
    </label>
  );
}

interface FieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly unit: string;
  readonly value: string;
  readonly onValue: (text: string | undefined) => void;
}

/** An amount or a share that is taken up when the field is left; what cannot be read stays, with a message. */
export function AmountField({ label, hint, unit, value, onValue }: FieldProps) {
  const [typed, setTyped] = useState(value);
  const [fault, setFault] = useState('');
  const id = useId();
  const take = (text: string) => {
    const amount = parseAmount(text);
    setFault(amount.kind === 'unreadable' ? amount.say : '');
    if (amount.kind === 'empty') onValue(undefined);
    if (amount.kind === 'amount') onValue(amount.text);
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint ? (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      ) : null}
      <span class="field-cells">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={
            [hint ? `${id}-hint` : '', fault ? `${id}-fault` : ''].join(' ').trim() || undefined
          }
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <span class="field-unit">{unit}</span>
      </span>
      <div id={`${id}-fault`} role="status">
        {fault ? <p class="field-message stop">{fault} What was there before still counts.</p> : null}
      </div>
    </div>
  );
}

/** The seller with one field set; a field without a value is taken out. */
const withField = (
  seller: Seller,
  field: keyof Seller,
  value: string | number | boolean | undefined,
): Seller => {
  const { [field]: _, ...others } = seller;
  return value === undefined || value === false ? others : { ...others, [field]: value };
};

function Terms({ name }: { name: string }) {
  const path = useStore($path);
  const seller = path.sellers?.[name] ?? {};
  const set = (field: keyof Seller) => (value: string | number | boolean | undefined) =>
    setSeller(name, withField(seller, field, value));
  const own = path.currency?.code;
  const code = seller.currency ?? 'USD';
  return (
    <details class="seller-terms no-print" aria-label={`Terms of ${name}`}>
      <summary>Terms of {name}</summary>
      <div class="field-pairs">
        <AmountField
          label="Carriage of one order"
          hint="Empty: our range, by the heaviest thing in it."
          unit={code}
          value={seller.freight ?? ''}
          onValue={set('freight')}
        />
        <AmountField
          label="Carriage is free from"
          hint="Goods of one order, before tax."
          unit={code}
          value={seller.freeFrom ?? ''}
          onValue={set('freeFrom')}
        />
        <AmountField
          label="Duty, only from abroad"
          hint="Share of goods and carriage. Your customs office prints it by kind of goods."
          unit="%"
          value={seller.dutyRate === undefined ? '' : plain(seller.dutyRate * 100, 2)}
          onValue={(text) => set('dutyRate')(text === undefined ? undefined : Number(text) / 100)}
        />
      </div>
      {own && own !== 'USD' ? (
        <Tick
          label={`These sums are in ${own}`}
          on={seller.currency === own}
          set={(on) => set('currency')(on ? own : undefined)}
        />
      ) : null}
      <Tick label="It ships from another country" on={seller.abroad === true} set={set('abroad')} />
      <Tick
        label="Its prices already hold the tax"
        on={seller.taxIncluded === true}
        set={set('taxIncluded')}
      />
      <Tick
        label="Tax is taken on carriage too"
        on={seller.carriageTaxed === true}
        set={set('carriageTaxed')}
      />
    </details>
  );
}

/** Each order at each shop: goods, carriage, tax and duty, which add up to the cent; and the terms they follow from. */
export function Sellers({ report }: { report: Report }) {
  const names = [...new Set(report.sellers.map(({ seller }) => seller).filter((name) => name !== ''))];
  return (
    <section class="rule-section" id="shops" tabIndex={-1}>
      <h2>Shops, carriage, tax and duty</h2>
      {report.sellers.length === 0 ? (
        <p>
          As soon as a line has a price and a shop, each order stands here with its carriage, tax and duty.
          Until then these are a share of the goods, by country.
        </p>
      ) : (
        <table class="table-stack" {...asTable} aria-label="Orders by shop">
          <ColumnHeads heads={HEADS} />
          <tbody>
            {report.sellers.map((row) => (
              <Order key={`${row.seller} ${row.state}`} row={row} />
            ))}
          </tbody>
        </table>
      )}
      {names.map((name) => (
        <Terms key={name} name={name} />
      ))}
    </section>
  );
}
