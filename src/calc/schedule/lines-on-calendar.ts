import type { BillLine, OrderBy, Report } from '../report.ts';
import type { Calendar } from './calendar.ts';
import type { DeliveryRow } from './calendar-deliveries.ts';

const DAYS_A_WEEK = 7;

const inDays = (weeks: number): number => Math.round(weeks * DAYS_A_WEEK);

const orderByOf = ({ needed, orderBy, orderBySlow, days }: DeliveryRow): OrderBy => ({
  neededAt: inDays(needed.p50),
  likely: inDays(orderBy),
  slow: inDays(orderBySlow),
  ...(days ? { dates: { neededAt: days.needed, likely: days.orderBy, slow: days.orderBySlow } } : {}),
});

/**
 * The report with the last days to order that the calendar found. The report's own are quick ones, by stage; the calendar
 * also knows that the inspection waits for what is measured on arrival. Lines that nobody has to wait for keep theirs.
 */
export function onCalendar(report: Report, { deliveries }: Calendar): Report {
  const rows = new Map(deliveries.map((row) => [row.part, orderByOf(row)]));
  const dated = (line: BillLine): BillLine => ({ ...line, orderBy: rows.get(line.part) ?? line.orderBy });
  return { ...report, bill: { ...report.bill, once: report.bill.once.map(dated) } };
}
