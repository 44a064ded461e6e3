import { Decimal } from 'decimal.js';
import type { Report, Spread } from '../calc/evaluate.ts';
import type { AmountRange } from './amounts.ts';
import { type BuyList, type BuyRow, sumName } from './buy-list.ts';

/** Which lines go into a message. */
export type MessageLines = 'everything' | 'still to buy';

const group = (whole: string): string => whole.replace(/\B(?=(\d{3})+$)/g, ',');

/** "$1,234.50". */
function exact(amount: string): string {
  const [whole = '0', cents = '00'] = new Decimal(amount).toFixed(2).split('.');
  return `$${group(whole)}.${cents}`;
}

/** A planning figure in whole dollars, tens from a hundred up. */
const rough = (amount: number): string => {
  const step = amount < 100 ? 1 : 10;
  return group(
    new Decimal(amount).div(step).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(step).toFixed(0),
  );
};

/** "$12.50" where the ends agree, else "$10.00 to $14.00". */
const span = ({ low, high }: AmountRange): string =>
  low === high ? exact(low) : `${exact(low)} to ${exact(high)}`;

const ways = ({ p10, p90 }: Spread): string =>
  `$${rough(p10)} to $${rough(p90)} in 16 of 20 ways it could turn out`;

const spentOrHave: readonly BuyRow['state'][] = ['have', 'ordered', 'arrived', 'checked'];

const howMany = ({ toHave, unit, packs, pack }: BuyRow): string => {
  const units = unit === 'each' ? String(toHave) : `${toHave} ${unit}`;
  return pack > 1 && packs > 0 ? `${units} (${packs} × pack of ${pack})` : units;
};

const stateText = ({ state, paid }: BuyRow): string => {
  if (state === 'have') return 'in the drawer';
  if (paid === 'comes back') return 'comes back';
  return paid === 'once' ? state : `${state}, paid ${paid}`;
};

/** "Toothed belt, 10 mm wide: 2; $8.00 to $14.00; need". */
function lineText(row: BuyRow): string {
  const name = row.size ? `${row.name}, ${row.size}` : row.name;
  const money = row.state === 'have' && row.line.high === '0.00' ? [] : [span(row.line)];
  const seller = row.seller ? [row.seller] : [];
  return `- ${name}: ${[howMany(row), ...money, stateText(row), ...seller].join('; ')}`;
}

/**
 * The buy list as plain text for a message: what, how many, range or price, state; the sums of the lines; what is
 * committed exactly and what the whole comes to as a range; the edition and that these are planning figures.
 */
export function buyMessage(
  list: BuyList,
  { money }: Pick<Report, 'money'>,
  lines: MessageLines = 'everything',
): string {
  const shown = list.rows.filter(({ state }) => lines === 'everything' || !spentOrHave.includes(state));
  const sums =
    lines === 'everything' ? list.totals.map((total) => `${sumName(total.paid)}: ${span(total)}`) : [];
  return [
    ...shown.map(lineText),
    '',
    ...(sums.length > 0 ? [...sums, 'Sums of lines are before freight, tax and duty.', ''] : []),
    `Paid or ordered: ${exact(money.committed)} exactly. Quoted: ${exact(money.quoted)} exactly.`,
    `Still to buy: ${ways(money.stillToBuy)}.`,
    `Everything in: ${ways(money)}.`,
    `US dollars. Planning figures, edition ${list.edition}: ${list.basis}`,
    '',
  ].join('\n');
}
