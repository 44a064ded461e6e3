import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Report, Spread } from '../../calc/evaluate.ts';
import type { TotalId } from '../../calc/why-number.ts';
import { $limits, type Limits } from '../preferences.ts';
import { $shown } from '../shared/currency.ts';
import {
  countWithin,
  exactMoney,
  hoursMark,
  hoursRange,
  middleHalf,
  moneyMark,
  moneyRange,
  ofTwenty,
  plain,
  weeksMark,
  weeksRange,
} from '../shared/format.ts';
import { useInTurn } from '../shared/in-turn.tsx';
import { MoneyRod } from '../shared/MoneyRod.tsx';
import { Rod } from '../shared/Rod.tsx';
import { $receipts, $report } from '../stores.ts';
import { Why } from '../why/Why.tsx';
import { LimitField } from './LimitField.tsx';

/** Width of a rod in the narrow column, px. */
const WIDTH = 256;

type Half = ReturnType<typeof middleHalf>;

interface Measured {
  readonly name: keyof Limits;
  readonly total: TotalId;
  readonly title: string;
  readonly label: string;
  readonly unitWord: string;
  readonly after?: string;
  readonly mark: (n: number) => string;
  /** "cost $3,800–4,900" */
  readonly half: (half: Half) => string;
  readonly limit: (n: number) => string;
}

const MEASURED: readonly Measured[] = [
  {
    name: 'money',
    total: 'money',
    title: 'Money',
    label: 'Money, everything in',
    unitWord: 'dollars',
    mark: moneyMark,
    half: ({ from, to }) => `cost ${moneyRange(from, to)}`,
    limit: exactMoney,
  },
  {
    name: 'hours',
    total: 'hours',
    title: 'Hours',
    label: 'Hours of your own',
    unitWord: 'hours',
    after: 'h',
    mark: hoursMark,
    half: ({ from, to }) => `take ${hoursRange(from, to)}`,
    limit: (n) => `${plain(n, 1)} h`,
  },
  {
    name: 'weeks',
    total: 'weeks-out',
    title: 'Lathe out of use',
    label: 'Weeks that the lathe is out of use',
    unitWord: 'weeks',
    after: 'weeks',
    mark: weeksMark,
    half: ({ from, to }) => `keep the lathe out of use ${weeksRange(from, to)}`,
    limit: (n) => `${plain(n, 1)} weeks`,
  },
];

function spreadOf(report: Report, name: keyof Limits): Spread {
  return name === 'weeks' ? report.weeksOut : report[name];
}

/** "Half of the ways this could turn out cost $3,800–4,900; 17 of 20 are under your $5,300." */
export function saySpread(spread: Spread, name: keyof Limits, limit: number | undefined): string {
  const about = MEASURED.find((each) => each.name === name) as Measured;
  const half = `Half of the ways this could turn out ${about.half(middleHalf(spread.twenty))}`;
  if (limit === undefined) return `${half}.`;
  return `${half}; ${ofTwenty(countWithin(spread.twenty, limit))} are within your ${about.limit(limit)}.`;
}

function Section({ about, children }: { about: Measured; children: ComponentChildren }) {
  return (
    <section class="card-section">
      <div class="card-line">
        <span>{about.title}</span>
        <LimitField {...about} label={about.label.toLowerCase()} />
      </div>
      {children}
    </section>
  );
}

interface CardRodProps {
  readonly about: Measured;
  readonly spread: Spread;
  readonly limit: number | undefined;
}

function CardRod({ about, spread, limit }: CardRodProps) {
  const drawn = {
    values: [...spread.twenty],
    before: [...before(about.name)],
    label: about.label,
    width: WIDTH,
    ...(limit === undefined ? {} : { limit }),
  };
  if (about.name === 'money') return <MoneyRod {...drawn} />;
  return <Rod {...drawn} format={about.mark} unitWord={about.unitWord} />;
}

function before(name: keyof Limits): readonly number[] {
  const moved = $receipts.get()[0]?.moved;
  if (!moved || name === 'weeks') return [];
  const old = name === 'money' ? moved.moneyTwenty : moved.hoursTwenty;
  const same =
    name === 'money' ? moved.moneyBefore === moved.moneyAfter : moved.hoursBefore === moved.hoursAfter;
  return same ? [] : old;
}

/** Each in a turn of its own: three at once would hold up the answer that is being given. */
function OneRod({ about }: { about: Measured }) {
  const report = useInTurn($report);
  const limit = useStore($limits)[about.name];
  useStore($receipts);
  useStore($shown);
  const spread = report && spreadOf(report, about.name);
  return (
    <Section about={about}>
      {spread ? (
        <>
          <CardRod about={about} spread={spread} limit={limit} />
          <p>{saySpread(spread, about.name, limit)}</p>
          <p>
            <Why asked={{ kind: 'total', id: about.total }} name={about.label}>
              Why this much?
            </Why>
          </p>
        </>
      ) : (
        <div class="rod-place" />
      )}
    </Section>
  );
}

/** Money, hours and weeks as twenty washers each, with the owner's limits and a sentence. */
export function CardRods() {
  return useMemo(() => MEASURED.map((about) => <OneRod key={about.name} about={about} />), []);
}
