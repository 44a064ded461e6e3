import { useState } from 'preact/hooks';
import type { Purchase } from '../../calc/core/purchase.ts';
import type { Report } from '../../calc/evaluate.ts';
import { addPurchases } from '../purchases.ts';
import { counted } from '../shared/format.ts';
import type { QuoteProposal } from './file-work.ts';

type Unmatched = QuoteProposal['unmatched'][number];

const priceWords = ({ price, currency = 'USD', per = 'unit', qty, seller, state }: Purchase): string =>
  [
    state,
    price
      ? `${price} ${currency} ${per === 'line' ? 'for all' : per === 'pack' ? 'a pack' : 'each'}`
      : 'no price',
    qty === undefined ? '' : `${qty} of them`,
    seller ?? '',
  ]
    .filter(Boolean)
    .join(', ');

interface RowProps {
  readonly row: Unmatched;
  readonly names: ReadonlyMap<string, string>;
  readonly chosen: string;
  readonly onChoose: (part: string) => void;
}

/** A row of the file that we would not guess at: why, and where it could be put by hand. */
function Left({ row, names, chosen, onChoose }: RowProps) {
  const others = [...names].filter(([part]) => !row.suggestions.includes(part));
  return (
    <li>
      <span>
        Line {row.row}: “{row.text}”. <span class="quiet">{row.reason}</span>
      </span>
      {row.purchase ? (
        <label class="field-line">
          <span>It is</span>{' '}
          <select value={chosen} onChange={(event) => onChoose(event.currentTarget.value)}>
            <option value="">left out</option>
            {row.suggestions.length > 0 ? (
              <optgroup label="Perhaps">
                {row.suggestions.map((part) => (
                  <option key={part} value={part}>
                    {names.get(part) ?? part}
                  </option>
                ))}
              </optgroup>
            ) : null}
            <optgroup label="All lines">
              {others.map(([part, name]) => (
                <option key={part} value={part}>
                  {name}
                </option>
              ))}
            </optgroup>
          </select>
        </label>
      ) : null}
    </li>
  );
}

interface Props {
  readonly proposal: QuoteProposal;
  readonly report: Report;
  readonly onDone: (say: string) => void;
}

/** What a list of prices comes to, to be looked at, ticked and only then taken. */
export function Proposal({ proposal, report, onDone }: Props) {
  const { matched, unmatched, notes } = proposal;
  const names = new Map(report.bill.once.map(({ part, name }) => [part, name]));
  const [off, setOff] = useState<ReadonlySet<number>>(new Set());
  const [byHand, setByHand] = useState<Readonly<Record<number, string>>>({});
  const taken = [
    ...matched.filter(({ row }) => !off.has(row)).map(({ part, purchase }) => [part, purchase] as const),
    ...unmatched.flatMap(({ row, purchase }) => {
      const part = byHand[row];
      return part && purchase ? [[part, purchase] as const] : [];
    }),
  ];
  const flip = (row: number, on: boolean) => {
    const next = new Set(off);
    if (on) next.delete(row);
    else next.add(row);
    setOff(next);
  };
  const take = () => {
    addPurchases(Object.fromEntries(taken));
    onDone(`${counted(taken.length, 'price')} taken. “Undo” at the foot of the page takes them back.`);
  };
  return (
    <div class="notice proposal">
      {notes.map(({ say }, at) => (
        <p key={at}>{say}</p>
      ))}
      {matched.length > 0 ? (
        <fieldset>
          <legend>{counted(matched.length, 'line')} found on your list</legend>
          {matched.map(({ row, part, purchase, how, remarks }) => (
            <label class="choice" key={row}>
              <input
                type="checkbox"
                checked={!off.has(row)}
                onChange={(event) => flip(row, event.currentTarget.checked)}
              />
              <span>
                {names.get(part) ?? part}: {priceWords(purchase)}{' '}
                <span class="quiet small">
                  line {row}, by its {how === 'id' ? 'item id' : 'name'}. {remarks.join(' ')}
                </span>
              </span>
            </label>
          ))}
        </fieldset>
      ) : null}
      {unmatched.length > 0 ? (
        <>
          <p>
            <b>{counted(unmatched.length, 'line')} of the file not taken.</b> We do not guess; put them where
            they belong, or leave them out.
          </p>
          <ul class="list-plain proposal-left">
            {unmatched.map((row) => (
              <Left
                key={row.row}
                row={row}
                names={names}
                chosen={byHand[row.row] ?? ''}
                onChoose={(part) => setByHand({ ...byHand, [row.row]: part })}
              />
            ))}
          </ul>
        </>
      ) : null}
      <p class="notice-actions">
        {taken.length > 0 ? (
          <button type="button" class="button primary small" onClick={take}>
            Take {counted(taken.length, 'price')}
          </button>
        ) : null}
        <button type="button" class="button small" onClick={() => onDone('Left as it was.')}>
          Leave everything as it is
        </button>
      </p>
    </div>
  );
}
