import type { Band } from './core/band.ts';
import type { Unit } from './core/quantity.ts';
import { formulaById } from './formulas/registry.ts';
import type { BillLine, PlannedTask, Report, RiskRow } from './report.ts';
import type { Explanation } from './why.ts';

export type TotalId = 'money' | 'hours' | 'weeks-out';

const leaf = (title: string, value: number, unit: Unit, say: string): Explanation => ({
  title,
  value,
  unit,
  origin: 'assumed',
  say,
  inputs: [],
});

const node = (
  title: string,
  value: number,
  unit: Unit,
  say: string,
  parts: readonly Explanation[],
): Explanation => ({
  title,
  value,
  unit,
  origin: 'derived',
  say,
  inputs: parts.map((part) => ({ name: part.title, parts: [part] })),
});

const tidy = (amount: number): number => Math.round(amount * 100) / 100;

const range = ([low, likely, high]: Band): string =>
  `low ${tidy(low)}, likely ${tidy(likely)}, high ${tidy(high)}`;

/** Several statements as sentences, each with its full stop. */
const sentences = (...statements: readonly string[]): string =>
  statements.map((each) => (/[.!?]$/.test(each) ? each : `${each}.`)).join(' ');

function lawOf(id: string): Pick<Explanation, 'law'> {
  const { equation, source } = formulaById(id);
  return { law: { id, equation, source, outside: [] } };
}

/** Why a total of the builds is what it is: its P50, the means that make up its mean, and every line below them. */
export function explainTotal(report: Report, id: TotalId): Explanation {
  const build = { money: moneyTotal, hours: hoursTotal, 'weeks-out': weeksOutTotal }[id];
  return { ...build(report), ...lawOf('quantile') };
}

function moneyTotal({ money, bill, edition }: Report): Explanation {
  const { meanGoods, meanLanded, meanTrouble, meanCredit, landedRate } = money.parts;
  const bought = bill.once.filter((line) => !line.credit);
  const sold = bill.once.filter((line) => line.credit);
  const parts = [
    node('Parts and services, mean', meanGoods, '$', goodsSay(edition.basis), bought.map(lineOf)),
    leaf(
      'Freight, tax and duty, mean',
      meanLanded,
      '$',
      `A share of the goods: ${range(landedRate)}. Your own figure on the lathe page replaces it.`,
    ),
    leaf(
      'Troubles, mean',
      meanTrouble,
      '$',
      money.troubleBy === 'allowance'
        ? 'Your flat share of the goods stands in the place of the risks.'
        : 'Each trouble strikes in its share of the builds. See the risks.',
    ),
    ...(meanCredit !== 0
      ? [node('Sold again, mean', meanCredit, '$', 'What old parts bring.', sold.map(lineOf))]
      : []),
  ];
  const say =
    'Half of the 2,000 builds cost less than this. The means below add up to the mean of the builds, which lies a little above the middle because things turn out dear more easily than cheap.';
  return node('Money, middle of the builds (P50)', money.p50, '$', say, parts);
}

const goodsSay = (basis: string): string =>
  `Every line drawn between its low and its high price. ${basis} The lines show the likely price.`;

/** What is quoted or paid, in the owner's own figures, and what is still to be bought at our range. */
function pricedSay({ purchase, packs, pack, each }: BillLine): string[] {
  const rest = packs > 0 ? [`${tidy(packs * pack)} still to buy at ${range(each)} dollars`] : [];
  if (!purchase?.goods) return rest;
  return [`${purchase.qty} ${purchase.state} for ${purchase.goods} dollars (${purchase.asTyped})`, ...rest];
}

function lineSay(line: BillLine): string {
  const { owned, qty, each, reasons, keep, purchase } = line;
  if (owned && !purchase) return 'You have it already.';
  const spares = keep.count > 0 ? [`${keep.count} more as a spare: ${keep.why.join('; ')}`] : [];
  const counted = purchase ? pricedSay(line) : [`${qty} at ${range(each)} dollars`];
  return sentences(...counted, ...reasons, ...spares);
}

const lineOf = (line: BillLine): Explanation => leaf(line.name, line.line[1], '$', lineSay(line));

const taskOf = ({ name, hours, because }: PlannedTask): Explanation =>
  leaf(name, hours[1], 'h', sentences(`Hours: ${range(hours)}`, ...because));

function hoursTotal({ hours, stages }: Report): Explanation {
  const parts = stages.map((stage) =>
    node(
      `Stage ${stage.number}: ${stage.name}`,
      stage.hours[1],
      'h',
      'Likely hours of its tasks.',
      stage.tasks.map(taskOf),
    ),
  );
  const trouble = leaf('Troubles, mean', hours.meanTrouble, 'h', 'Each strikes in its share of the builds.');
  const say =
    'Half of the 2,000 builds take fewer hours. Every hour stands on a task; the lines show the likely hours, the troubles their mean.';
  return node('Hours, middle of the builds (P50)', hours.p50, 'h', say, [...parts, trouble]);
}

function weeksOutTotal({ weeksOut, stages, machine }: Report): Explanation {
  const out = stages.flatMap((stage) => stage.tasks).filter((task) => task.lathe === 'out');
  const perWeek = machine.facts['hours-per-week'];
  const say =
    'Hours of the tasks that leave the lathe unusable, with the troubles that strike there, divided by your hours a week. Waiting for parts is not in it.';
  const parts = out.map(taskOf);
  const week = perWeek ? [leaf('Your hours a week', perWeek.value, 'h/week', 'From the lathe page.')] : [];
  return node('Weeks out of use, middle of the builds (P50)', weeksOut.p50, 'week', say, [...parts, ...week]);
}

const spared = (spares: RiskRow['spares']): string[] =>
  spares ? ['A spare stands on the list and is paid there, so only the hours are counted'] : [];

/** Why a risk has the chance and the weight it has. */
export function explainRisk({
  name,
  chance,
  ofTwenty,
  levers,
  money,
  hours,
  expectedMoney,
  expectedHours,
  ours,
  theirs,
  spares,
}: RiskRow): Explanation {
  const lever = levers.map(({ by, why }) =>
    leaf(why, by, '1', by > 1 ? 'Makes it likelier.' : 'Makes it rarer.'),
  );
  const parts = [
    node(
      'Chance on this path',
      chance,
      '1',
      theirs === undefined
        ? `About ${ofTwenty} of 20 builds. A judgement of the trade, moved by your answers.`
        : `About ${ofTwenty} of 20 builds: your own chance. Ours would be ${Math.round(100 * ours)} %.`,
      theirs === undefined ? lever : [],
    ),
    leaf('If it strikes: money', money[1], '$', sentences(range(money), ...spared(spares))),
    leaf('If it strikes: hours', hours[1], 'h', sentences(range(hours))),
    leaf('Mean hours over all builds', expectedHours, 'h', 'Chance times the mean of its hours.'),
  ];
  return {
    ...node(
      name,
      expectedMoney,
      '$',
      'Mean money over all builds: chance times the mean of what it costs.',
      parts,
    ),
    ...lawOf('expected-risk'),
  };
}
