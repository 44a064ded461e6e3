import type { Row } from 'write-excel-file/universal';
import { type AmountRange, sumOf } from './amounts.ts';
import type { BuyList } from './buy-list.ts';
import type { OrderRow } from './orders.ts';
import {
  dollarCell,
  formulaCell,
  headCell,
  letters,
  sumCell,
  textCell,
  type WorkedSheet,
} from './sheet-cells.ts';

const ends = ['low', 'likely', 'high'] as const satisfies readonly (keyof AmountRange)[];
const charges = ['carriage', 'tax', 'duty'] as const;
const GOODS = 3;
const CHARGES = GOODS + 1;
const TOTALS = CHARGES + charges.length * ends.length;

const heads = [
  ...['Seller', 'State', 'Lines', 'Goods (USD)'],
  ...['Carriage', 'Tax', 'Duty', 'Total'].flatMap((name) => ends.map((end) => `${name}, ${end} (USD)`)),
];

/** Goods and the three charges of a row, at one end of their ranges. */
const acrossFormula = (end: number, row: number): string =>
  [GOODS, ...charges.map((_, at) => CHARGES + at * ends.length + end)]
    .map((at) => `${letters(at)}${row}`)
    .join('+');

const orderRow = (order: OrderRow, row: number): Row => [
  ...[textCell(order.seller), textCell(order.state), { value: order.lines, type: Number }],
  dollarCell(order.goods),
  ...charges.flatMap((charge) => ends.map((end) => dollarCell(order[charge][end]))),
  ...ends.map((_, end) => formulaCell(acrossFormula(end, row))),
];

/** Orders by shop: each total is a formula across its row, and the last row sums the columns. */
export function ordersSheet({ orders }: BuyList): WorkedSheet {
  const last = orders.length + 1;
  const summed = Array.from({ length: TOTALS + ends.length - GOODS }, (_, at) => sumCell(GOODS + at, last));
  const columnSums = [
    sumOf(orders.map(({ goods }) => goods)),
    ...[...charges, 'total' as const].flatMap((name) =>
      ends.map((end) => sumOf(orders.map((order) => order[name][end]))),
    ),
  ];
  return {
    sheet: {
      sheet: 'Orders',
      data: [
        heads.map(headCell),
        ...orders.map((order, at) => orderRow(order, at + 2)),
        [headCell('Sum of orders'), null, null, ...summed],
      ],
      columns: heads.map((_, at) => ({ width: at === 0 ? 24 : 12 })),
      stickyRowsCount: 1,
      orientation: 'landscape',
    },
    results: [...orders.flatMap(({ total }) => ends.map((end) => total[end])), ...columnSums],
  };
}

/** What the whole comes to on average, its parts and their sum; and what all figures rest on. */
export function basisSheet({ edition, basis, average }: BuyList): WorkedSheet {
  const { parts, total } = average;
  const said = [
    `Prices of edition ${edition}. ${basis}`,
    'The buy list and the orders are in US dollars; your own prices stand as you typed them. Lines are before freight, tax and duty.',
    'The sum of every low and the sum of every high: no purchase comes out that way.',
    'The average is that of all ways it could turn out; the plan itself says how far they lie apart.',
  ];
  return {
    sheet: {
      sheet: 'On average',
      data: [
        [headCell('Part of the total'), headCell('On average (USD)')],
        ...parts.map(({ name, amount }): Row => [textCell(name), dollarCell(amount)]),
        [headCell('Everything in'), sumCell(1, parts.length + 1)],
        ...said.map((text): Row => [{ value: text, type: String, wrap: true }]),
      ],
      columns: [{ width: 70 }, { width: 18 }],
      stickyRowsCount: 1,
    },
    results: [total],
  };
}
