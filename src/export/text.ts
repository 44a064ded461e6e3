import type { Band } from '../calc/core/band.ts';
import type { BillLine, Report, Setting, Spread } from '../calc/evaluate.ts';
import { decisionById, optionById } from '../calc/guide.ts';
import { asWords } from './units.ts';

const whole = (value: number): string => String(Math.round(value));
/** Hundredths at most: cents, and about half a minute. */
const tidy = (value: number): number => Math.round(value * 100) / 100;
const band = ([low, likely, high]: Band, unit: string): string =>
  `${tidy(low)} / ${tidy(likely)} / ${tidy(high)} ${unit}`;
const spread = (of: Spread, unit: string): string =>
  `P10 ${whole(of.p10)}, P50 ${whole(of.p50)}, P80 ${whole(of.p80)}, P90 ${whole(of.p90)} ${unit}`;

function section(title: string, lines: readonly string[]): string {
  return [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

function answers(report: Report): string[] {
  return report.choices
    .filter((choice) => choice.status !== 'not-asked')
    .map((choice) => {
      const decision = decisionById(choice.decision)!;
      const labels = choice.options.map((id) => optionById(decision, id)!.label).join(' + ');
      return `${decision.name}: ${labels} (${choice.status === 'answered' ? 'answered' : `${choice.status}, ${choice.why}`})`;
    });
}

const billLine = (line: BillLine): string =>
  `${line.qty} ${line.unit} ${line.name} [${line.part}]: ${line.owned ? 'already there' : band(line.line, 'USD')}; ${line.reasons.join('; ')}`;

function stages(report: Report): string[] {
  return report.stages.flatMap((stage) => [
    `${stage.number} ${stage.name}: ${band(stage.hours, 'h')}${stage.outOfUse ? ', lathe out of use' : ''}`,
    ...stage.tasks.map((task) => `    ${task.name} [${task.id}] ${band(task.hours, 'h')}`),
    ...(stage.hold ? [`    HOLD ${stage.hold.say}`] : []),
    ...(stage.stop ? [`    You may stop here and have ${stage.stop.say}`] : []),
  ]);
}

/** What stands on the sheet, and a blank for what is found on the machine. */
function settingLine({ axis, label, value, text, writeIn, diameterOrRadius, how }: Setting): string {
  const figure = value ? asWords(value) : text;
  const known = [figure, writeIn ? '________' : undefined].filter((part) => part !== undefined).join('; ');
  return `${axis}: ${label}${diameterOrRadius ? ` (${diameterOrRadius})` : ''}: ${known}. ${how}`;
}

/** A report as plain text: totals, answers, findings, bill, stages, risks, settings. Planning figures, said so at the top. */
export function asText(report: Report): string {
  const { money, hours, weeksOut } = report;
  return [
    `Edition ${report.edition.id}: ${report.edition.basis}`,
    section('Totals over 2,000 builds', [
      `money: ${spread(money, 'USD, everything in')}`,
      `goods before freight, sum of bands: ${band(money.parts.goods, 'USD')}`,
      `mean goods ${whole(money.parts.meanGoods)} + freight, tax and duty ${whole(money.parts.meanLanded)} + trouble ${whole(money.parts.meanTrouble)} + credits ${whole(money.parts.meanCredit)} USD`,
      `hours: ${spread(hours, 'h')}; planned tasks ${band(hours.planned, 'h')}, mean trouble ${whole(hours.meanTrouble)} h`,
      `lathe out of use: ${spread(weeksOut, 'weeks')}`,
      `start to finish: ${spread(report.weeksTotal, 'weeks')}`,
      `paid every year: ${band(report.yearly, 'USD')}`,
      `ways of answering in the builds: ${report.waysOfAnswering}`,
    ]),
    section('Answers', answers(report)),
    section('What speaks up', [
      ...report.verdicts.map((each) => `${each.weight}: ${each.say}`),
      ...report.findings.map((each) => `${each.level}: ${each.say} [${each.id}]`),
      ...report.checks.map(
        (each) =>
          `${each.result}: ${each.label}${each.margin === undefined ? '' : `, margin ${each.margin.toFixed(2)}`}`,
      ),
    ]),
    section('Parts', report.bill.once.map(billLine)),
    section('Parts paid for every year', report.bill.perYear.map(billLine)),
    section('Stages', stages(report)),
    section(
      'Risks',
      report.risks.map(
        (risk) =>
          `${risk.ofTwenty} of 20 ${risk.name} [${risk.id}]: on average ${whole(risk.expectedMoney)} USD, ${whole(risk.expectedHours)} h${risk.counted ? '' : ' (shown, not summed)'}${risk.injury ? ' (injury)' : ''}`,
      ),
    ),
    section('Settings of the machine', report.settings.map(settingLine)),
  ].join('\n\n');
}
