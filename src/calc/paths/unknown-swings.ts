import { figure } from '../core/machine.ts';
import type { Totals } from '../cost/builds.ts';
import { quantile, sortColumn } from '../cost/columns.ts';
import type { Difference } from '../cost/difference.ts';
import { riskRows } from '../cost/risk-rows.ts';
import { wantedOf } from '../cost/wanted.ts';
import { type Fact, facts, makesSense } from '../facts.ts';
import type { RiskRow } from '../report.ts';
import { risks } from '../trade.ts';
import { type PerKind, perKind, swingKinds, threeOfTotals } from './measures-of-total.ts';
import { type Present, presentOf } from './present.ts';
import { NINETIETH, TENTH, totalsHeld, totalsStruck } from './redrawn.ts';

/** The typical total with one unknown at its low and its high end, all else as it is. */
export interface UnknownEnds {
  readonly low: number;
  readonly high: number;
}

/** Something yet to be found out. Totals in dollars, hours and weeks out of use. */
export interface UnknownSwing extends PerKind<UnknownEnds> {
  readonly id: string;
  readonly kind: 'market' | 'pace' | 'landed' | 'risk' | 'fact';
  readonly name: string;
  /** What the two ends stand for, in words. */
  readonly lowMeans: string;
  readonly highMeans: string;
  readonly findOut: string;
  /** Width of the middle eight of ten ways today, and once this is known. */
  readonly narrows: PerKind<{ readonly now: number; readonly then: number }>;
}

type Totalled = PerKind<Difference>;

const widthOf = ({ p10, p90 }: Difference): number => p90 - p10;

const endsOf = (low: Totalled, high: Totalled): PerKind<UnknownEnds> =>
  perKind((kind) => ({
    low: Math.min(low[kind].p50, high[kind].p50),
    high: Math.max(low[kind].p50, high[kind].p50),
  }));

const narrowed = (now: Totalled, then: Totalled): UnknownSwing['narrows'] =>
  perKind((kind) => ({ now: widthOf(now[kind]), then: Math.min(widthOf(now[kind]), widthOf(then[kind])) }));

function heldSwings(present: Present, now: Totalled): UnknownSwing[] {
  const of = (totals: Totals): Totalled => threeOfTotals(present, totals);
  const shares = sortColumn(present.ways[0]!.landed);
  const share = (p: number): Totalled => of(totalsHeld(present, { landed: quantile(shares, p) }));
  const percent = (p: number): string => `${Math.round(100 * quantile(shares, p))} % on the goods`;
  const market = (score: number): Totalled => of(totalsHeld(present, { market: score }));
  const pace = (score: number): Totalled => of(totalsHeld(present, { pace: score }));
  const landed: UnknownSwing = {
    id: 'landed',
    kind: 'landed',
    name: 'Freight, tax and duty',
    lowMeans: percent(0.1),
    highMeans: percent(0.9),
    findOut:
      'Put the three dearest goods in a basket to your door and read what carriage, tax and duty add; type the share on the lathe page.',
    ...endsOf(share(0.1), share(0.9)),
    narrows: narrowed(now, share(0.5)),
  };
  return [
    {
      id: 'market',
      kind: 'market',
      name: 'Level of prices',
      lowMeans: 'shops are cheap in one year of ten',
      highMeans: 'shops are dear in one year of ten',
      findOut:
        'Ask prices for the dearest five lines of the buy list on one day; they tell the level of all.',
      ...endsOf(market(TENTH), market(NINETIETH)),
      narrows: narrowed(now, market(0)),
    },
    {
      id: 'pace',
      kind: 'pace',
      name: 'Your own pace',
      lowMeans: 'as quick as the quickest of ten builders',
      highMeans: 'as slow as the slowest of ten builders',
      findOut: 'Time the first two tasks and compare them with the hours of the plan.',
      ...endsOf(pace(TENTH), pace(NINETIETH)),
      narrows: narrowed(now, pace(0)),
    },
    ...(present.planned.path.facts[LANDED] === undefined ? [landed] : []),
  ];
}

/** Of the risks that cost most on average, each happening and not happening. */
const BIG_RISKS = 10;

function riskSwings(present: Present, now: Totalled): UnknownSwing[] {
  const rows = riskRows(
    present.planned.state,
    present.planned.path,
    present.edition,
    wantedNow(present),
  ).filter((row) => row.counted);
  return rows.slice(0, BIG_RISKS).map((row) => riskSwing(present, now, row));
}

const wantedNow = ({ planned, machine, edition }: Present) => wantedOf(planned.state, machine, edition.book);

function riskSwing(present: Present, now: Totalled, row: RiskRow): UnknownSwing {
  const at = risks.findIndex(({ id }) => id === row.id);
  const without = threeOfTotals(present, totalsStruck(present, at, false));
  const struck = threeOfTotals(present, totalsStruck(present, at, true));
  return {
    id: row.id,
    kind: 'risk',
    name: row.name,
    lowMeans: 'does not happen',
    highMeans: `happens, as in ${row.ofTwenty} of 20`,
    findOut: `${row.prevent} ${row.sign}`,
    ...endsOf(without, struck),
    narrows: narrowed(now, without),
  };
}

/** The share that stands in the list by itself already. */
const LANDED = 'landed-rate';

/** How far a lathe lies from the typical figure of its class on most; judgement, no source. */
const OFF_TYPICAL = 0.2;
/** Swings under a dollar, a tenth of an hour and a tenth of a week in all three are none. */
const NOTICED = { money: 1, hours: 0.1, weeks: 0.1 } as const;

function factSwings(present: Present, now: Totalled): UnknownSwing[] {
  const { path } = present.planned;
  return facts.flatMap((fact) => {
    if (!fact.typical || fact.group === 'own' || fact.id === LANDED || path.facts[fact.id] !== undefined)
      return [];
    return factSwing(present, now, fact) ?? [];
  });
}

function factSwing(present: Present, now: Totalled, fact: Fact): UnknownSwing | undefined {
  const typical = figure(present.machine, fact.id);
  const [low, high] = [typical * (1 - OFF_TYPICAL), typical * (1 + OFF_TYPICAL)];
  if (!makesSense(fact, low) || !makesSense(fact, high)) return undefined;
  const ends = endsOf(withFact(present, fact.id, low), withFact(present, fact.id, high));
  if (swingKinds.every((kind) => ends[kind].high - ends[kind].low < NOTICED[kind])) return undefined;
  return {
    id: fact.id,
    kind: 'fact',
    name: fact.name,
    lowMeans: 'a fifth under what is typical',
    highMeans: 'a fifth over what is typical',
    findOut: fact.howToMeasure,
    ...ends,
    narrows: narrowed(now, withFact(present, fact.id, typical)),
  };
}

function withFact({ planned, edition }: Present, fact: string, value: number): Totalled {
  const path = { ...planned.path, facts: { ...planned.path.facts, [fact]: value } };
  const there = presentOf(path, edition.book);
  return threeOfTotals(there, there.totals);
}

/** Everything yet to be found out, the widest in money first. */
export function unknownSwings(present: Present): UnknownSwing[] {
  const now = threeOfTotals(present, present.totals);
  const all = [...heldSwings(present, now), ...riskSwings(present, now), ...factSwings(present, now)];
  return all.sort((a, b) => b.money.high - b.money.low - (a.money.high - a.money.low));
}
