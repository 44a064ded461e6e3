import type { Band } from '../core/band.ts';
import { rooms } from '../guide.ts';
import type { BillLine, Report } from '../report.ts';
import { dayAfter } from '../schedule/order-by.ts';
import { sumOf } from './exact-sums.ts';

/** Ways of laying the buy list out. */
export const buyViews = ['order', 'stage', 'room', 'seller'] as const;

export type BuyView = (typeof buyViews)[number];

/** Lines that belong together, with the sum of what they cost or will cost, dollars to the cent. */
export interface BuyGroup {
  readonly id: string;
  readonly name: string;
  readonly lines: readonly BillLine[];
  readonly sum: Band;
}

interface Heading {
  readonly id: string;
  readonly name: string;
  readonly holds: (line: BillLine) => boolean;
}

/** Bought once and not taken off again: what the shop list is about. */
export const toBuy = ({ bill }: Report): readonly BillLine[] => bill.once.filter(({ credit }) => !credit);

const isOpen = ({ state }: BillLine): boolean =>
  state === 'need' || state === 'quoted' || state === 'returned';

/** Last day to order: a date where the start is known, else days from the start. */
const lastDay = ({ orderBy }: BillLine): string | number => orderBy.dates?.likely ?? orderBy.likely;

const before =
  (limit: string | number) =>
  (line: BillLine): boolean =>
    isOpen(line) && lastDay(line) <= limit;

const A_WEEK = 7;
const A_MONTH = 28;
const A_QUARTER = 84;

/** Without a day to start on, the days count from the start, whenever that is. */
const fromTheStart: readonly Heading[] = [
  { id: 'before', name: 'Order before you start', holds: before(0) },
  { id: 'month', name: 'Order in the first four weeks', holds: before(A_MONTH) },
  { id: 'quarter', name: 'Order in weeks five to twelve', holds: before(A_QUARTER) },
  { id: 'later', name: 'Order later', holds: isOpen },
];

const byDate = (today: string): readonly Heading[] => [
  { id: 'late', name: 'Should be ordered already', holds: (line) => isOpen(line) && lastDay(line) < today },
  { id: 'week', name: 'This week', holds: before(dayAfter(today, A_WEEK)) },
  { id: 'month', name: 'Within four weeks', holds: before(dayAfter(today, A_MONTH)) },
  { id: 'later', name: 'Later', holds: isOpen },
];

const settled: readonly Heading[] = [
  { id: 'coming', name: 'On the way', holds: ({ state }) => state === 'ordered' },
  { id: 'check', name: 'Arrived: check it now', holds: ({ state }) => state === 'arrived' },
  { id: 'in-hand', name: 'In hand', holds: ({ state }) => state === 'checked' || state === 'have' },
];

function headings(report: Report, view: BuyView, today: string): readonly Heading[] {
  if (view === 'order') {
    const dated = report.bill.once.some(({ orderBy }) => orderBy.dates);
    return [...(dated ? byDate(today) : fromTheStart), ...settled];
  }
  if (view === 'stage')
    return report.stages.map(({ id, name }) => ({ id, name, holds: ({ stage }) => stage === id }));
  if (view === 'room')
    return rooms.map(({ id, name }) => ({ id, name, holds: ({ subsystem }) => subsystem === id }));
  const sellers = [...new Set(toBuy(report).flatMap(({ purchase }) => purchase?.seller ?? []))].sort();
  return sellers.map((name) => ({ id: name, name, holds: ({ purchase }) => purchase?.seller === name }));
}

const REST: Readonly<Record<BuyView, string>> = {
  order: 'Other lines',
  stage: 'Other lines',
  room: 'Other lines',
  seller: 'No shop named yet',
};

const byDay = (a: BillLine, b: BillLine): number =>
  lastDay(a) < lastDay(b) ? -1 : lastDay(a) > lastDay(b) ? 1 : 0;

/** Each line in the first group that takes it; groups without a line are left out. `today` is an ISO day. */
export function buyGroups(report: Report, view: BuyView, today: string): BuyGroup[] {
  let left = toBuy(report);
  const groups = headings(report, view, today).map(({ id, name, holds }) => {
    const lines = left.filter(holds);
    left = left.filter((line) => !lines.includes(line));
    return { id, name, lines };
  });
  return [...groups, { id: 'rest', name: REST[view], lines: left }]
    .filter(({ lines }) => lines.length > 0)
    .map((group) => ({
      ...group,
      lines: view === 'order' ? group.lines.toSorted(byDay) : group.lines,
      sum: sumOf(group.lines.map(({ line }) => line)),
    }));
}
