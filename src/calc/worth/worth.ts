import { compile } from '../choices/state.ts';
import type { Alternative } from '../core/alternative.ts';
import { is } from '../core/condition.ts';
import { type Family, isFamily } from '../core/family.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Column } from '../cost/edition.ts';
import { spreadOf } from '../cost/spread.ts';
import { type Present, presentOf } from '../paths/present.ts';
import type { Spread } from '../report.ts';
import { columnOf, onceBuilds } from './alternative-builds.ts';
import { hourValues, type Payback, paybackBuilds } from './payback.ts';
import { breakEvenBatch, likelySaved, outsideAvoided, piecesOf, savedBuilds } from './saved.ts';
import { type Signal, signalsOf } from './signals.ts';
import { verdictFor, type WorthVerdict } from './verdict.ts';

/** One family in figures: pieces a year, hours a year, pieces from which a batch pays. */
export interface FamilyWorth {
  readonly name: string;
  readonly pieces: number;
  /** Hours a year at the owner's own times; below zero where programs cost more than they save. */
  readonly savedHours: number;
  /** Pieces from which a batch pays, with the program to write and when it comes back; undefined: never. */
  readonly breakEvenFirst: number | undefined;
  readonly breakEvenAgain: number | undefined;
}

/** What of the saving something else gives, for its own money and hours. */
export interface AlternativeWorth {
  readonly id: string;
  readonly saved: Spread;
  readonly payback: readonly Payback[];
}

/** Whether it is worth it, in figures and words. Plain data; never a score. */
export interface Worth {
  readonly families: readonly FamilyWorth[];
  /** Hours saved a year over the builds; undefined where no parts were named. */
  readonly saved: Spread | undefined;
  /** The owner's own times taken at their word: hours a year. */
  readonly likelySaved: number;
  readonly outsideAvoided: number;
  /** Side by side at several values of an hour, with the building counted and not; hidden where the hours are the hobby. */
  readonly payback: readonly Payback[];
  /** Where the hours are the hobby: the hours of it that are bought, and dollars for each. */
  readonly hobby: { readonly hours: Spread; readonly moneyPerHour: number } | undefined;
  readonly alternatives: readonly AlternativeWorth[];
  readonly signals: readonly Signal[];
  readonly verdict: WorthVerdict;
}

const HUNDREDTHS = 100;
const buildsForFun = compile(is('purpose', 'learning'));

const sides = (builds: { money: Column; hours: Column; saved: Column }, outside: number): Payback[] =>
  hourValues.flatMap((perHour) =>
    [false, true].map((counts) => paybackBuilds(builds, outside, perHour, counts)),
  );

const familyWorth = (family: Family): FamilyWorth => ({
  name: family.name,
  pieces: piecesOf(family),
  savedHours: likelySaved(family),
  breakEvenFirst: breakEvenBatch(family, true),
  breakEvenAgain: breakEvenBatch(family, false),
});

/**
 * Whether the conversion of a path is worth it for these families of parts; those whose figures make no sense are left
 * out. `list` are the alternatives to set beside it. Throws only on an author's mistake.
 */
export function worthOf(
  path: Path,
  book: PriceBook,
  families: readonly Family[] = path.families ?? [],
  list: readonly Alternative[] = [],
): Worth {
  const present = presentOf(path, book);
  const { totals, edition, planned } = present;
  const usable = families.filter(isFamily);
  const saved = savedBuilds(edition, usable);
  const outside = outsideAvoided(usable);
  const hobby = buildsForFun(planned.state);
  const figures = {
    money: spreadOf(totals.money, HUNDREDTHS),
    hours: spreadOf(totals.hours, HUNDREDTHS),
    saved: usable.length > 0 ? spreadOf(saved, HUNDREDTHS) : undefined,
    likelySaved: usable.reduce((sum, family) => sum + likelySaved(family), 0),
  };
  const payback = usable.length > 0 && !hobby ? sides({ ...totals, saved }, outside) : [];
  const known = { present, families: usable, ...figures, outside, payback, hobby };
  return {
    families: usable.map(familyWorth),
    saved: figures.saved,
    likelySaved: figures.likelySaved,
    outsideAvoided: outside,
    payback,
    hobby: hobby ? { hours: figures.hours, moneyPerHour: figures.money.p50 / figures.hours.p50 } : undefined,
    alternatives: usable.length > 0 ? list.flatMap((each) => beside(present, each, saved, hobby)) : [],
    signals: signalsOf(known),
    verdict: verdictFor(known),
  };
}

/** What an alternative with bands of its own saves of the same hours. */
function beside(
  present: Present,
  alternative: Alternative,
  saved: Column,
  hobby: boolean,
): AlternativeWorth[] {
  const { costs, saves, id } = alternative;
  if (!saves || 'path' in costs || costs.use) return [];
  const builds = onceBuilds(present.edition, alternative, costs.once, present.ways[0]!.landed);
  const share = columnOf(present.edition, `alternative saves ${id}`, saves, 'pace');
  const part = saved.map((hours, build) => Math.round((hours * share[build]!) / HUNDREDTHS));
  return [
    {
      id,
      saved: spreadOf(part, HUNDREDTHS),
      payback: hobby ? [] : sides({ ...builds, saved: part }, 0),
    },
  ];
}
