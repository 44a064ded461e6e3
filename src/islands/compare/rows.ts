import type { ComparedColumn } from '../../calc/comparing.ts';
import { type AbilityRow, abilityRows } from '../../calc/core/alternative.ts';
import { decisionById, optionById } from '../../calc/guide.ts';
import type { MeasureId } from '../beside/measures.ts';
import { ABILITY_NAMES, sayAble, yearOf } from '../beside/words.ts';
import { SKILLS } from '../guide/OptionBlock.tsx';
import { listed, moneyRange } from '../shared/format.ts';
import { small } from './names.ts';

export type RowId =
  | AbilityRow
  | MeasureId
  | 'lacks'
  | 'perYear'
  | 'risks'
  | 'checks'
  | 'skill'
  | 'stops'
  | 'final';

interface Group {
  readonly name: string;
  readonly rows: readonly RowId[];
}

/** Every row of a comparison, by what it tells. */
export const GROUPS: readonly Group[] = [
  { name: 'What it can do', rows: [...abilityRows, 'lacks'] },
  { name: 'What it could cost', rows: ['money', 'hours', 'weeksOut', 'perYear'] },
  {
    name: 'What could go wrong, and what is for ever',
    rows: ['risks', 'checks', 'skill', 'stops', 'final'],
  },
];

export const ROW_NAMES: Readonly<Record<RowId, string>> = {
  ...ABILITY_NAMES,
  lacks: 'What you still cannot do',
  money: 'Money',
  hours: 'Hours',
  weeksOut: 'Weeks without the lathe',
  perYear: 'A year of using it',
  risks: 'Most costly troubles',
  checks: 'Checks',
  skill: 'Hardest skill',
  stops: 'Where you may stop',
  final: 'Cuts for ever',
};

const large = (say: string): string => `${say.charAt(0).toUpperCase()}${say.slice(1)}`;

/** What you still cannot do with it, a sentence each. */
export function lacksOf({ lacks }: ComparedColumn): string[] {
  if (lacks.length === 0) return ['Nothing of what these rows ask.'];
  return lacks.map(({ row, say }) => (row ? `${ABILITY_NAMES[row]}: ${small(say)}` : say));
}

/** What a year of using it costs, in words. */
export function sayYear(column: ComparedColumn): string {
  const year = yearOf(column);
  if (year) return `Half of them: ${year[0]} and ${year[1]}.`;
  if (column.paidByUse) return 'By the piece: say what you make under “Is it worth it”.';
  const [low, , high] = column.yearly;
  return high > 0 ? `${moneyRange(low, high)} for what wears out.` : 'Nothing more.';
}

const NAMED = 2;

/** "An experienced machinist’s or electrician’s: bored on the lathe, i can wire; and 2 more" */
export function saySkill({ skill: { level, asks } }: ComparedColumn): string {
  const named = asks.slice(0, NAMED).flatMap(({ decision, option }) => {
    const about = decisionById(decision);
    return about ? `${about.name.toLowerCase()} (${small(optionById(about, option)?.label ?? option)})` : [];
  });
  const more = asks.length > NAMED ? [`${asks.length - NAMED} more`] : [];
  const whose = large(SKILLS[level]);
  return named.length > 0 ? `${whose}: ${listed([...named, ...more])}` : whose;
}

/** Where one may stop: what stands there then, without its further words. */
export const stopsOf = ({ stops }: ComparedColumn): string[] =>
  stops.map(({ say }) => large(say.split(/[,.;](?:\s|$)/)[0] ?? say));

/** All that a cell says. Two cells that say the same are the same. */
export function sayCell(id: RowId, column: ComparedColumn): string {
  switch (id) {
    case 'lacks':
      return lacksOf(column).join(' ');
    case 'money':
    case 'hours':
    case 'weeksOut':
      return column[id].twenty.map((n) => n.toFixed(2)).join(' ');
    case 'perYear':
      return sayYear(column);
    case 'risks':
      return column.risks.map(({ name, ofTwenty }) => `${name} ${Math.round(ofTwenty)}`).join('; ');
    case 'checks':
      return JSON.stringify(column.checks);
    case 'skill':
      return saySkill(column);
    case 'stops':
      return column.kind + column.stops.map(({ say }) => say).join(' ');
    case 'final':
      return column.final.map(({ name }) => name).join('; ');
    default:
      return sayAble(column.abilities[id]);
  }
}

/** Whether the columns say the same in a row; a column alone differs from nothing, and hides nothing. */
export const isSame = (id: RowId, columns: readonly ComparedColumn[]): boolean =>
  columns.length > 1 && new Set(columns.map((column) => sayCell(id, column))).size === 1;

export interface SortedGroup {
  readonly name: string;
  readonly differ: readonly RowId[];
  readonly same: readonly RowId[];
}

/** The rows of each group in which the columns differ, and those in which they say the same. */
export const sortedRows = (columns: readonly ComparedColumn[]): SortedGroup[] =>
  GROUPS.map(({ name, rows }) => ({
    name,
    differ: rows.filter((id) => !isSame(id, columns)),
    same: rows.filter((id) => isSame(id, columns)),
  }));
