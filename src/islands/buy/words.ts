import type { Band } from '../../calc/core/band.ts';
import type { BillLine, Report } from '../../calc/evaluate.ts';
import { counted, plain } from '../shared/format.ts';

const UNITS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  each: ['', ''],
  metre: ['m', 'm'],
  set: ['set', 'sets'],
  pair: ['pair', 'pairs'],
  lot: ['lot', 'lots'],
  kit: ['kit', 'kits'],
  job: ['job', 'jobs'],
};

/** "4", "2 lots", "3.5 m". */
export function unitsText(n: number, unit: string): string {
  const [one, many] = UNITS[unit] ?? [unit, unit];
  return `${plain(n, 1)} ${n === 1 ? one : many}`.trim();
}

/** "4", "2 m", "1 pack of 10, 6 left over", with the spares among them. */
export function quantityWords(line: BillLine): string {
  const { qty, unit, keep, pack, packs, leftOver } = line;
  return [
    unitsText(qty, unit),
    keep.count > 0 ? `and ${plain(keep.count, 1)} spare` : '',
    pack > 1 && packs > 0 ? `: ${counted(packs, 'pack')} of ${pack}` : '',
    leftOver > 0 ? `, ${plain(leftOver, 1)} left over` : '',
  ]
    .filter((piece) => piece !== '')
    .join(' ')
    .replace(' :', ':')
    .replace(' ,', ',');
}

/** "for stage 5, Carriage". */
export function neededFor({ stage }: BillLine, { stages }: Report): string {
  const planned = stages.find(({ id }) => id === stage);
  return planned ? `for stage ${planned.number + 1}, ${planned.name.toLowerCase()}` : '';
}

/** Why it is bought, and why spares are: each reason once. */
export const reasonWords = ({ reasons, keep }: BillLine): string =>
  [...reasons, ...keep.why.map((why) => `spare: ${why}`)].join('; ');

const days = (n: number): string => counted(Math.abs(Math.round(n)), 'day');

/** Last day to order, likely and slow, as a date where the start is known. */
export function orderWords({ orderBy, leadDays }: BillLine): string {
  if (leadDays[2] === 0) return 'Nothing to wait for.';
  if (orderBy.dates) return `Order by ${orderBy.dates.likely}; if it comes slowly, by ${orderBy.dates.slow}.`;
  const when =
    orderBy.likely < 0
      ? `${days(orderBy.likely)} before you start`
      : `${days(orderBy.likely)} after the start`;
  return `Order ${when}; it takes ${plain(leadDays[0])}–${plain(leadDays[2])} days.`;
}

/** True for a band without a spread: a sum that is known. */
export const isExact = ([low, , high]: Band): boolean => low === high;
