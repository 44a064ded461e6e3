import type { Limit, WayFigures, WaysThrough, WayThrough } from '../../calc/choosing.ts';
import type { Skill } from '../../calc/core/decision.ts';
import type { Answer, Path } from '../../calc/core/path.ts';
import { decisionById, decisions, optionById } from '../../calc/guide.ts';
import { toShown } from '../shared/currency.ts';
import {
  counted,
  hoursMark,
  lengthText,
  listed,
  moneyMark,
  plain,
  signed,
  significant,
  type Units,
  weeks,
} from '../shared/format.ts';
import type { PlainKind } from './limits.ts';

/** Ways lie closer together than a single estimate is sure: money to ten, so that neighbours can be told apart. */
export const wayMoney = (dollars: number): string => signed(Math.round(toShown(dollars) / 10) * 10);
export const wayHours = (hours: number): string => `${plain(hours, hours < 20 ? 1 : 0)} h`;

export const SKILLED: Readonly<Record<Exclude<Skill, 5>, string>> = {
  1: 'anyone',
  2: 'a handy person',
  3: 'a careful amateur',
  4: 'an experienced machinist or electrician',
};

export const PLAIN_WORDS: Readonly<Record<PlainKind, string>> = {
  checks: 'No check says stop',
  reversible: 'Nothing that cannot be undone',
  'whole-castings': 'No casting of the lathe is drilled or cut',
  'hand-use': 'It can still be used by hand',
  threads: 'It must cut threads',
};

const metal = (id: string): string =>
  decisions
    .find((decision) => decision.id === 'materials')
    ?.options.find((option) => option.id === id)
    ?.label.toLowerCase() ?? id;

/** A limit in words: "money: at most $2,500 in 16 of 20 ways it could turn out". */
export function sayLimit(limit: Limit, units: Units): string {
  switch (limit.kind) {
    case 'money':
      return `money: at most ${moneyMark(Math.round(toShown(limit.most) * 100) / 100)}`;
    case 'hours':
      return `hours: at most ${hoursMark(limit.most)}`;
    case 'weeks':
      return `out of use: at most ${weeks(limit.most)}`;
    case 'skill':
      return limit.most === 5 ? 'skill: any' : `skill: no more than that of ${SKILLED[limit.most]}`;
    case 'drill':
      return `it must drill ${lengthText(limit.diameter, units)} in ${metal(limit.material)} under power`;
    case 'play':
      return `cross slide play of at most ${lengthText(limit.most, units)} on the diameter`;
    default: {
      const words = PLAIN_WORDS[limit.kind];
      return `${words[0]!.toLowerCase()}${words.slice(1)}`;
    }
  }
}

/** "2,010,624", "3,243.9 million": a count that can be read at a glance. */
export function many(count: number): string {
  if (count < 1e7) return plain(count);
  if (count < 1e9) return `${plain(significant(count / 1e6, 3), 1)} million`;
  if (count < 1e12) return `${plain(significant(count / 1e9, 3), 2)} thousand million`;
  if (count < 1e15) return `${plain(significant(count / 1e12, 3), 2)} million million`;
  return 'more than a thousand million million';
}

/** Roughly how long a search over so many ways takes; measured on an ordinary computer. */
export function roughTime(legal: number): string {
  if (legal < 1e5) return 'about two seconds';
  if (legal < 1e8) return 'a few seconds';
  if (legal < 1e11) return 'a quarter of a minute';
  if (legal < 1e14) return 'a minute or more';
  return 'many minutes';
}

/** A margin as the checks have it: "1.7 times what it needs". */
export const sayMargin = (margin: number): string =>
  margin >= 3 ? 'three times what it needs or more' : `${plain(margin, 2)} times what it needs`;

export interface Difference {
  readonly decision: string;
  readonly name: string;
  readonly here: string;
  readonly there: string;
}

function labelOf(id: string, answer: Answer | undefined): string {
  const decision = decisionById(id);
  const labels = (answer ?? []).map((option) => (decision && optionById(decision, option)?.label) ?? option);
  return labels.length === 0 ? 'not asked' : `“${labels.join('”, “')}”`;
}

type Answers = Readonly<Record<string, Answer>>;

/** Questions of the guide that two sets of answers settle otherwise. */
export const differencesOf = (here: Answers, there: Answers): Difference[] =>
  decisions
    .filter(({ id, place }) => place === 'guide' && (here[id] ?? []).join() !== (there[id] ?? []).join())
    .map(({ id, name }) => ({
      decision: id,
      name,
      here: labelOf(id, here[id]),
      there: labelOf(id, there[id]),
    }));

const NAMED = 3;

function sayInstead(here: Path, there: Path): string {
  const all = differencesOf(here.answers, there.answers);
  const named = all.slice(0, NAMED).map((each) => `${each.name}: ${each.here} for ${each.there}`);
  const more = all.length - NAMED;
  return named.join('; ') + (more > 0 ? `; and ${counted(more, 'more answer')}` : '');
}

const tenth = (hours: number): number => Math.round(hours * 10) / 10;

/** What a way gains and what it gives up against another, in words. */
export function tradeOf(here: WayFigures, there: WayFigures): { gains: string[]; gives: string[] } {
  const gains: string[] = [];
  const gives: string[] = [];
  const dollars = here.money - there.money;
  if (Math.abs(dollars) >= 0.5) (dollars < 0 ? gains : gives).push(exactly(Math.abs(dollars)));
  const hours = tenth(here.hours - there.hours);
  if (hours !== 0) (hours < 0 ? gains : gives).push(`${plain(Math.abs(hours), 1)} h`);
  if (here.margin !== there.margin)
    (here.margin > there.margin ? gains : gives).push(
      `strength and stiffness (${plain(here.margin, 2)} instead of ${plain(there.margin, 2)} times what it needs)`,
    );
  return { gains, gives };
}

const exactly = (dollars: number): string => signed(Math.round(toShown(dollars)));

/** Why a way stands beside its next cheaper neighbour: what it gives up for what, and with which answers. */
export function sayWhy(
  way: WayThrough,
  cheaper: WayThrough | undefined,
  number: number,
  proved = true,
): string {
  if (!cheaper)
    return proved
      ? 'No way inside your limits takes less money.'
      : 'Of the ways looked at, it takes the least money; others may take less.';
  const { gains, gives } = tradeOf(way.figures, cheaper.figures);
  const gain = gains.length > 0 ? `gains ${listed(gains)}` : 'is as quick and as strong';
  const give = gives.length > 0 ? ` and gives up ${listed(gives)}` : '';
  return `Against way ${number - 1} it ${gain}${give}. ${sayInstead(way.path, cheaper.path)}.`;
}

/** A way against the plan as it is: "$1,340 less, 13 h more". */
export function sayAgainst(figures: WayFigures, plan: { money: number; hours: number }): string {
  const money = Math.round(toShown(figures.money - plan.money) / 10) * 10;
  const hours = Math.round(figures.hours - plan.hours);
  const said = [
    money === 0 ? 'the same money' : `${signed(Math.abs(money))} ${money < 0 ? 'less' : 'more'}`,
    hours === 0 ? 'the same hours' : `${plain(Math.abs(hours))} h ${hours < 0 ? 'less' : 'more'}`,
  ];
  return said.join(', ');
}

/** What the search proved: how many ways, and how few it had to work out. */
export function sayProof({ legal, visited, frontier }: WaysThrough): string {
  const ways = `${many(legal)} ${legal === 1 ? 'way fits' : 'ways fit'} the rules, and each is decided: ${many(visited)} worked out one by one, ${many(legal - visited)} by rules, limits and bounds, without a visit.`;
  return frontier.length > 0
    ? `${ways} No other way is at once as cheap, as quick and as strong as one of these.`
    : ways;
}
