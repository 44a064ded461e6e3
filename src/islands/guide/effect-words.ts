import type { Moved, MovedCheck, MovedRisk, OptionEffect, Says } from '../../calc/choosing.ts';
import { decisionById } from '../../calc/guide.ts';
import { sayAnswer } from '../receipts.ts';
import { toShown } from '../shared/currency.ts';
import {
  counted,
  hours,
  hoursRange,
  listed,
  money,
  moneyRange,
  roundHours,
  roundMoney,
  signed,
} from '../shared/format.ts';

type Difference = OptionEffect['money'];

/** How one kind of difference is rounded and said; amounts are given without their sign. */
interface Kind {
  readonly round: (n: number) => number;
  readonly one: (n: number) => string;
  readonly range: (low: number, high: number) => string;
  /** Said of what rounds to nothing and yet is not nothing. */
  readonly least: () => string;
}

const MONEY: Kind = {
  round: (n) => roundMoney(toShown(n)),
  one: money,
  range: moneyRange,
  least: () => `under ${signed(10)}`,
};
const HOURS: Kind = { round: roundHours, one: hours, range: hoursRange, least: () => 'under 0.1 h' };

function sayTypical(kind: Kind, typical: number): string {
  return kind.round(typical) === 0 ? 'typically nothing' : `typically ${kind.one(typical)}`;
}

function sayOneWay(kind: Kind, { p10, p50, p90 }: Difference, way: 'more' | 'less'): string {
  const [low, high] = way === 'more' ? [p10, p90] : [-p90, -p10];
  if (kind.round(high) === 0) return `${kind.least()} ${way}`;
  if (kind.round(low) === 0) return `up to ${kind.one(high)} ${way}, ${sayTypical(kind, Math.abs(p50))}`;
  const range = kind.range(low, high);
  return range === kind.one(high) ? `${range} ${way}` : `${range} ${way}, ${sayTypical(kind, Math.abs(p50))}`;
}

function say(kind: Kind, difference: Difference, says: Says): string {
  if (says === 'same') return 'no change';
  if (says === 'unclear') return 'no clear difference';
  return sayOneWay(kind, difference, says);
}

/** "$530–690 less, typically $600", "no clear difference", "no change". */
export const sayMoney = (difference: Difference, says: Says): string => say(MONEY, difference, says);

/** "6–14 h less, typically 9 h". */
export const sayHours = (difference: Difference, says: Says): string => say(HOURS, difference, says);

/** The ends of a difference that goes either way: "−$160 to +$90". */
export const moneyEnds = ({ p10, p90 }: Difference): string => moneyRange(p10, p90);
export function hoursEnds({ p10, p90 }: Difference): string {
  const end = (n: number) => `${n > 0 ? '+' : n < 0 ? '−' : ''}${hours(Math.abs(n))}`;
  return `${end(roundHours(p10))} to ${end(roundHours(p90))}`;
}

const RISKS_SAID = 3;

const rise = ({ before, after }: MovedRisk): number => after - before;

/** Rising before falling, among the rising those that can hurt somebody first, then the larger move. */
const inOrder = (risks: readonly MovedRisk[]): MovedRisk[] =>
  risks.toSorted(
    (a, b) =>
      Number(rise(b) > 0) - Number(rise(a) > 0) ||
      Number(b.injury) - Number(a.injury) ||
      Math.abs(rise(b)) - Math.abs(rise(a)),
  );

/** The risks that a strip names and draws. */
export const risksSaid = (risks: readonly MovedRisk[]): MovedRisk[] => inOrder(risks).slice(0, RISKS_SAID);

/** "Noise trips inputs or spoils counts 8 to 4 of 20; and 2 more changes." */
export function sayRisks(risks: readonly MovedRisk[]): string {
  if (risks.length === 0) return 'no change';
  const said = risksSaid(risks).map(
    ({ name, before, after, injury }) =>
      `${name} ${Math.round(before)} to ${Math.round(after)} of 20${injury ? ' (can injure)' : ''}`,
  );
  const more = risks.length - said.length;
  return [...said, ...(more > 0 ? [`and ${counted(more, 'more change')}`] : [])].join('; ');
}

const NAMED = 2;

const named = (checks: readonly MovedCheck[], words: string): string => {
  const labels = checks.slice(0, NAMED).map(({ label }) => label);
  const more = checks.length > NAMED ? ', …' : '';
  return checks.length === 0 ? '' : `${checks.length} ${words}: ${labels.join(', ')}${more}`;
};

const only = (checks: readonly MovedCheck[], words: string): string =>
  checks.length === 0 ? '' : checks.length <= NAMED ? named(checks, words) : `${checks.length} ${words}`;

/** "1 to look at: Isolated speed signal; 3 now ok; 9 gone". The grave ones are named, then the rest counted. */
export function sayChecks(checks: readonly MovedCheck[]): string {
  const turned = (result: MovedCheck['after']) => checks.filter(({ after }) => after === result);
  const said = [
    named(turned('stop'), 'to stop at'),
    named(turned('look'), 'to look at'),
    only(turned('not-yet'), 'waiting for a figure'),
    only(turned('ok'), 'now ok'),
    only(turned('gone'), 'gone'),
  ].filter(Boolean);
  return said.length > 0 ? said.join('; ') : 'no change';
}

const nameOf = (id: string): string => decisionById(id)?.name.toLowerCase() ?? id;

/** "cable to screened cable" */
function sayForced({ decision, after }: Moved['forces'][number]): string {
  const about = decisionById(decision);
  return about ? `${about.name.toLowerCase()} to “${sayAnswer(about, after)}”` : decision;
}

export interface EffectLine {
  readonly lead: string;
  readonly text: string;
}

const blockedOf = (moves: Moved): string[] => [...new Set(moves.blocks.map(({ decision }) => decision))];
const freedOf = (moves: Moved): string[] => [...new Set(moves.frees.map(({ decision }) => decision))];

/** What an option opens, closes, sets and makes final: one short line each. */
export function effectLines(moves: Moved | undefined): EffectLine[] {
  if (!moves) return [];
  const lines: [lead: string, words: readonly string[]][] = [
    ['Cannot be undone', moves.irreversible.map(({ name }) => name)],
    ['Also sets', moves.forces.map(sayForced)],
    ['Asks as well', moves.opens.map(nameOf)],
    ['No longer asks', moves.closes.map(nameOf)],
    ['Rules out answers to', blockedOf(moves).map(nameOf)],
    ['Allows more answers to', freedOf(moves).map(nameOf)],
  ];
  return lines
    .filter(([, words]) => words.length > 0)
    .map(([lead, words]) => ({ lead, text: `${listed(words)}.` }));
}

const isStill = ({ moneySays, hoursSays, moves }: OptionEffect): boolean =>
  moneySays === 'same' &&
  hoursSays === 'same' &&
  (moves === undefined || (moves.risks.length === 0 && moves.checks.length === 0));

/** The answer that stands now and would change nothing. */
export const isAsItIs = (effect: OptionEffect): boolean => effect.now && isStill(effect);

/** The strip in one breath, for a reader who hears the option: "$530–690 less, hours: no change, 1 risk up, 2 down". */
export function sayInShort(effect: OptionEffect): string {
  if (!effect.allowed) return '';
  if (isAsItIs(effect)) return 'The plan as it is.';
  const { money: byMoney, moneySays, hours: byHours, hoursSays, moves } = effect;
  const risks = moves?.risks ?? [];
  const up = risks.filter((risk) => rise(risk) > 0).length;
  const said = [
    `Money: ${sayMoney(byMoney, moneySays)}`,
    `hours: ${sayHours(byHours, hoursSays)}`,
    up > 0 ? `${counted(up, 'risk')} up` : '',
    risks.length > up ? `${counted(risks.length - up, 'risk')} down` : '',
    moves && moves.checks.length > 0 ? counted(moves.checks.length, 'check changes', 'checks change') : '',
    moves && moves.forces.length > 0 ? `also sets ${counted(moves.forces.length, 'other answer')}` : '',
  ].filter(Boolean);
  return `${said.join('; ')}.`;
}
