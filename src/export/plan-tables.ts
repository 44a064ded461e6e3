import { Decimal } from 'decimal.js';
import type { Report } from '../calc/evaluate.ts';
import { roomById } from '../calc/guide.ts';
import type { BuyTable } from './buy-columns.ts';
import { toCsv } from './csv.ts';

/** A table of the plan; figures as plain decimal text. */
export type PlanTable = Pick<BuyTable, 'heads' | 'rows'>;

const hundredths = (figure: number): string =>
  Number.isFinite(figure) ? new Decimal(figure).toDecimalPlaces(2).toString() : '';
const roomName = (id: string): string => roomById(id)?.name ?? id;

/** Tasks in the order of the stages; hours of work. */
const taskTable = ({ stages }: Report): PlanTable => ({
  heads: [
    ...['Stage', 'Task id', 'Room', 'Task', 'Hours, low', 'Hours, likely', 'Hours, high', 'After', 'Tools'],
    ...['Lathe', 'Can it be undone', 'Test', 'Safety', 'Note'],
  ],
  rows: stages.flatMap(({ number, name, tasks }) =>
    tasks.map((task) => [
      ...[`${number} ${name}`, task.id, roomName(task.subsystem), task.name, ...task.hours.map(hundredths)],
      ...[task.after.join(' '), task.tools, task.lathe, task.undo, task.test],
      ...[task.safety ?? '', task.note ?? ''],
    ]),
  ),
});

/** Risks as ranked: how often of twenty, and mean dollars and hours over all builds. */
const riskTable = ({ risks }: Report): PlanTable => ({
  heads: [
    ...[
      'Risk id',
      'Room',
      'Risk',
      'Of twenty',
      'Dollars, on average',
      'Hours, on average',
      'Cause',
      'Effect',
    ],
    ...['Sign', 'What prevents it', 'Can injure'],
  ],
  rows: risks.map((risk) => [
    ...[risk.id, roomName(risk.subsystem), risk.name, String(risk.ofTwenty)],
    ...[hundredths(risk.expectedMoney), hundredths(risk.expectedHours)],
    ...[risk.cause, risk.effect, risk.sign, risk.prevent, risk.injury ? 'yes' : 'no'],
  ]),
});

/** Checks of the design and what they came to; the margin is a share of the limit. */
const checkTable = ({ checks }: Report): PlanTable => ({
  heads: ['Check id', 'Room', 'Check', 'Result', 'Margin'],
  rows: checks.map((check) => [
    ...[check.id, roomName(check.subsystem), check.label, check.result],
    check.margin === undefined ? '' : hundredths(check.margin),
  ]),
});

export const planTables = { tasks: taskTable, risks: riskTable, checks: checkTable } as const;

/** One table of the plan as the text of a CSV file, marked as UTF-8. */
export function planCsv(report: Report, table: keyof typeof planTables): string {
  const { heads, rows } = planTables[table](report);
  return `\uFEFF${toCsv([heads, ...rows])}`;
}
