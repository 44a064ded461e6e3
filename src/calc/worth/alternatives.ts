import { compile, type State } from '../choices/state.ts';
import type { Ability, AbilityRow, Alternative, OnceBands, UseBands } from '../core/alternative.ts';
import type { Skill } from '../core/decision.ts';
import type { Family } from '../core/family.ts';
import { figure } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Column } from '../cost/edition.ts';
import { spreadOf } from '../cost/spread.ts';
import { BUILDS } from '../cost/strata.ts';
import { decisions } from '../guide.ts';
import { type Present, presentOf } from '../paths/present.ts';
import type { Spread } from '../report.ts';
import { columnOf, type OnceBuilds, onceBuilds } from './alternative-builds.ts';

/** An alternative in the figures of a conversion, from the same 2,000 builds. Dollars, hours, weeks. */
export interface AlternativeFigures {
  readonly id: string;
  readonly name: string;
  readonly means: string;
  readonly gives: string;
  readonly lacks: string;
  readonly bestFor: string;
  readonly abilities: Readonly<Record<AbilityRow, Ability>>;
  readonly skill: Skill;
  readonly risks: readonly { readonly id: string; readonly name: string; readonly ofTwenty: number }[];
  readonly money: Spread;
  readonly hours: Spread;
  readonly weeksOut: Spread;
  /** What using it costs in a year; undefined where it costs nothing more, or where nothing is known of the parts. */
  readonly perYear: { readonly money: Spread; readonly hours: Spread } | undefined;
  /** Something is paid for as it is used. */
  readonly paidByUse: boolean;
  /** Worked out on the owner's lathe as a path of answers. */
  readonly asPath: Path | undefined;
  /** Why it is looked at before a conversion; undefined where nothing speaks for it first. */
  readonly first: string | undefined;
}

const HUNDREDTHS = 100;
const MONTHS = 12;
const IN_BATCH = 10;

/** The answers of another path on this owner's lathe: lathe and workshop stay what they are, and so does the drawer. */
export function onOwnLathe(other: Path, own: Path): Path {
  const facts = decisions.filter(({ place }) => place === 'lathe').map(({ id }) => id);
  const kept = [...facts, 'condition', 'shop-tools', 'materials'].flatMap((id) =>
    own.answers[id] ? [[id, own.answers[id]] as const] : [],
  );
  const { edition, size, facts: figures, owned, chances, allowance } = own;
  return {
    edition,
    size,
    facts: figures,
    owned,
    answers: { ...other.answers, ...Object.fromEntries(kept) },
    ...(chances ? { chances } : {}),
    ...(allowance === undefined ? {} : { allowance }),
  };
}

/** Every alternative on this owner's lathe, in the order of the list. Families of parts make what is paid by use a sum a year. */
export function alternativesOf(
  path: Path,
  book: PriceBook,
  list: readonly Alternative[],
  families: readonly Family[] = path.families ?? [],
): AlternativeFigures[] {
  const own = presentOf(path, book);
  return list.map((alternative) => ({
    ...wordsOf(alternative),
    ...('path' in alternative.costs
      ? ofPath(onOwnLathe(alternative.costs.path, path), book)
      : ofBands(own, alternative, families)),
    paidByUse: 'use' in alternative.costs && alternative.costs.use !== undefined,
    first: reasonFirst(alternative, own.planned.state),
  }));
}

export const wordsOf = (alternative: Alternative) => {
  const { costs: _costs, saves: _saves, firstWhen: _firstWhen, risks, ...words } = alternative;
  return {
    ...words,
    risks: risks.map(({ id, name, chance }) => ({ id, name, ofTwenty: Math.round(20 * meanOf(chance)) })),
  };
};

const meanOf = ([low, likely, high]: readonly [number, number, number]): number =>
  (low + 4 * likely + high) / 6;

export function reasonFirst({ firstWhen = [] }: Alternative, state: State): string | undefined {
  return firstWhen.find(({ when }) => compile(when)(state))?.why;
}

type Figures = Pick<AlternativeFigures, 'money' | 'hours' | 'weeksOut' | 'perYear' | 'asPath'>;

/** Paid once, in every build: cents, hundredths of an hour, and time out of use of which `week` make a week. */
export interface BuildsOnce extends OnceBuilds {
  readonly week: number;
}

export const buildsOfPlan = ({ totals, machine }: Present): BuildsOnce => ({
  money: totals.money,
  hours: totals.hours,
  weeksOut: totals.hoursOut,
  week: figure(machine, 'hours-per-week') * HUNDREDTHS,
});

/** The builds of an alternative with bands of its own, at the freight, tax and duty of the owner's plan. */
export const buildsOfBands = (own: Present, alternative: Alternative, once: OnceBands): BuildsOnce => ({
  ...onceBuilds(own.edition, alternative, once, own.ways[0]!.landed),
  week: HUNDREDTHS,
});

export const spreadsOf = ({ money, hours, weeksOut, week }: BuildsOnce) => ({
  money: spreadOf(money, HUNDREDTHS),
  hours: spreadOf(hours, HUNDREDTHS),
  weeksOut: spreadOf(weeksOut, week),
});

export function ofPath(path: Path, book: PriceBook): Figures {
  return { ...spreadsOf(buildsOfPlan(presentOf(path, book))), perYear: undefined, asPath: path };
}

function ofBands(own: Present, alternative: Alternative, families: readonly Family[]): Figures {
  const { costs, id } = alternative;
  if ('path' in costs) throw new Error(`${id} has no bands of its own`);
  return {
    ...spreadsOf(buildsOfBands(own, alternative, costs.once)),
    perYear: costs.use && perYear(own, id, costs.use, families),
    asPath: undefined,
  };
}

/** What using it costs in a year; undefined where nothing is known of the parts. */
export function perYear(
  own: Present,
  id: string,
  use: UseBands,
  families: readonly Family[],
): Figures['perYear'] {
  const builds = yearOfUse(own, id, use, families);
  return builds && { money: spreadOf(builds.money, HUNDREDTHS), hours: spreadOf(builds.hours, HUNDREDTHS) };
}

/** A year of using it, in every build; undefined where it is paid by the piece and no parts are known. */
export function yearOfUse(
  { edition }: Present,
  id: string,
  use: UseBands,
  families: readonly Family[],
): { money: Column; hours: Column } | undefined {
  if (!use.perMonth && families.length === 0) return undefined;
  const sum = { money: new Float64Array(BUILDS), hours: new Float64Array(BUILDS) };
  const add = (
    to: Column,
    name: string,
    band: UseBands['perMonth'],
    times: number,
    moves: 'market' | 'pace',
  ) => {
    if (!band) return;
    const column = columnOf(edition, `alternative ${name} ${id}`, band, moves);
    for (let at = 0; at < BUILDS; at += 1) to[at]! += times * column[at]!;
  };
  add(sum.money, 'month', use.perMonth, MONTHS, 'market');
  for (const { piecesPerBatch, batchesPerYear, outsidePrice } of families) {
    const pieces = piecesPerBatch * batchesPerYear;
    if (use.perPiece && outsidePrice !== undefined) {
      for (let at = 0; at < BUILDS; at += 1) sum.money[at]! += pieces * outsidePrice * HUNDREDTHS;
    } else {
      const many = piecesPerBatch > IN_BATCH && use.perPieceInBatch !== undefined;
      add(sum.money, 'batch', use.perBatch, batchesPerYear, 'market');
      add(
        sum.money,
        many ? 'piece in batch' : 'piece',
        many ? use.perPieceInBatch : use.perPiece,
        pieces,
        'market',
      );
    }
    add(sum.hours, 'batch hours', use.hoursPerBatch, batchesPerYear, 'pace');
  }
  return sum;
}
