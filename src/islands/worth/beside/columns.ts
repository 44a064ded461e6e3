import type { AlternativeFigures, Payback, SideBySide } from '../../../calc/choosing.ts';
import type { Ability, AbilityRow } from '../../../calc/core/alternative.ts';
import { abilityRows, CONVERSION } from '../../../calc/core/alternative.ts';
import type { Skill } from '../../../calc/core/decision.ts';
import type { Path } from '../../../calc/core/path.ts';
import type { Report, Spread } from '../../../calc/evaluate.ts';
import { decisionById, optionById } from '../../../calc/guide.ts';
import { ABILITY_NAMES, MOST_COLUMNS } from '../../beside/words.ts';

/** One answer to the wish, in the rows that all of them share. */
export interface Column {
  readonly id: string;
  readonly name: string;
  readonly means: string;
  /** Why it is looked at first, or undefined. */
  readonly first: string | undefined;
  readonly abilities: Readonly<Record<AbilityRow, Ability>>;
  readonly money: Spread;
  readonly hours: Spread;
  readonly weeksOut: Spread;
  readonly perYear: AlternativeFigures['perYear'];
  readonly paidByUse: boolean;
  readonly skill: Skill;
  readonly risks: readonly { readonly id: string; readonly name: string; readonly ofTwenty: number }[];
  readonly lacks: readonly string[];
  /** Hours saved a year and pay-back; undefined where nobody can say. */
  readonly saved: Spread | undefined;
  readonly payback: readonly Payback[];
  readonly asPath: Path | undefined;
}

const MOST_RISKS = 5;

const skillsOf = ({ decision, options }: Report['choices'][number]): Skill[] => {
  const about = decisionById(decision);
  return about ? options.flatMap((id) => optionById(about, id)?.skill ?? []) : [];
};

/** The hardest skill that any answer of the plan asks for. */
const hardestOf = ({ choices }: Report): Skill =>
  choices
    .filter(({ status }) => status !== 'not-asked')
    .flatMap(skillsOf)
    .toSorted((a, b) => b - a)[0] ?? 1;

function ownColumn({ own, worth }: SideBySide, report: Report, name: string): Column {
  const short = abilityRows.flatMap((row) => {
    const { can, say } = own.abilities[row];
    return can === 'yes' ? [] : [`${ABILITY_NAMES[row]}: ${say.charAt(0).toLowerCase()}${say.slice(1)}`];
  });
  return {
    id: CONVERSION,
    name: 'Your plan',
    means: name,
    first: undefined,
    ...own,
    perYear: undefined,
    paidByUse: false,
    skill: hardestOf(report),
    risks: report.risks.filter(({ counted }) => counted).slice(0, MOST_RISKS),
    lacks: short.length > 0 ? short : ['Nothing of what these rows ask.'],
    saved: worth.saved,
    payback: worth.payback,
    asPath: undefined,
  };
}

/** Every column by its id, the owner's plan among them, in the order in which they are looked at. */
export function columnsOf(side: SideBySide, report: Report, ownName: string): Column[] {
  const worths = new Map(side.worth.alternatives.map((each) => [each.id, each]));
  const others = side.alternatives.map(
    (each): Column => ({
      ...each,
      lacks: [each.lacks],
      saved: worths.get(each.id)?.saved,
      payback: worths.get(each.id)?.payback ?? [],
    }),
  );
  const all = new Map([ownColumn(side, report, ownName), ...others].map((each) => [each.id, each]));
  return side.order.flatMap((id) => all.get(id) ?? []);
}

/** The columns shown until the owner ticks others: the own plan and the first of the rest, in their order. */
export function firstColumns(order: readonly string[], most = MOST_COLUMNS): string[] {
  const others = order.filter((id) => id !== CONVERSION).slice(0, most - 1);
  return order.filter((id) => id === CONVERSION || others.includes(id));
}

/** The ticked columns with one more or one less, in their order; never none and never more than fit. */
export function ticked(
  order: readonly string[],
  shown: readonly string[],
  id: string,
  on: boolean,
): string[] {
  const next = order.filter((each) => (each === id ? on : shown.includes(each)));
  return next.length === 0 || next.length > MOST_COLUMNS ? [...shown] : next;
}
