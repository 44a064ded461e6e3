import type { Family } from '../calc/core/family.ts';
import type { Path } from '../calc/core/path.ts';
import type { Purchase, Seller } from '../calc/core/purchase.ts';
import { type PriceKey, sentPrices } from './prices.ts';
import { writeDay } from './written.ts';

/** Words and figures of one thing, with a stroke between them; what is not said is not written. */
const strokes = (said: readonly (string | false | undefined)[]): string => said.filter(Boolean).join('/');

const after = (word: string, value: string | number | undefined): string | undefined =>
  value === undefined ? undefined : `${word}${value}`;

const writeOrder = ({ state, price, per, currency, qty, date, seller }: Purchase): string =>
  strokes([state, price, per, currency, after('x', qty), date && `on${writeDay(date)}`, seller]);

const writeShop = ({ freight, freeFrom, currency, abroad, dutyRate, ...tax }: Seller): string =>
  strokes([
    after('carriage-', freight),
    after('free-from-', freeFrom),
    currency,
    abroad && 'abroad',
    after('duty-', dutyRate),
    tax.carriageTaxed && 'tax-on-carriage',
    tax.taxIncluded && 'tax-in-prices',
  ]);

const writeFamily = ({ byHand, byProgram, ...family }: Family): string =>
  strokes([
    `pieces-${family.piecesPerBatch}`,
    `batches-${family.batchesPerYear}`,
    `hand-set-up-${byHand.setUp}`,
    `hand-piece-${byHand.piece}`,
    `first-set-up-${byProgram.firstSetUp}`,
    `set-up-${byProgram.setUp}`,
    `attended-${byProgram.attended}`,
    family.shape,
    after('outside-', family.outsidePrice),
  ]);

/** A shop of which nothing is typed is its letter alone. */
const listed = <Entry>(
  group: Readonly<Record<string, Entry>> | undefined,
  say: (entry: Entry) => string,
): string =>
  Object.entries(group ?? {})
    .map(([id, entry]) => [id, say(entry)].filter((part) => part !== '').join(':'))
    .join(',');

/** The pieces of a link that say something of the owner's prices, by key. */
export function pricePairs(path: Path): [PriceKey, string][] {
  const { purchases, sellers, currency, chances, allowance, start, families } = sentPrices(path);
  const pairs: [PriceKey, string][] = [
    ['orders', listed(purchases, writeOrder)],
    ['shops', listed(sellers, writeShop)],
    ['money', currency ? `${currency.code}:${currency.perDollar}` : ''],
    ['chances', listed(chances, String)],
    ['allowance', allowance === undefined ? '' : String(allowance)],
    ['first-day', start ? writeDay(start) : ''],
    ['families', (families ?? []).map(writeFamily).join(',')],
  ];
  return pairs.filter(([, said]) => said !== '');
}
