import { useStore } from '@nanostores/preact';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Report, Spread } from '../../calc/evaluate.ts';
import { saySpread } from '../guide/CardRods.tsx';
import { $limits, type Limits } from '../preferences.ts';
import { hoursMark, moneyMark, weeksMark } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { MoneyRod } from '../shared/MoneyRod.tsx';
import { to } from '../shared/places.ts';
import { Rod } from '../shared/Rod.tsx';
import { Why } from '../why/Why.tsx';
import { keepsAnother } from './numbers.ts';
import { OneByOne } from './OneByOne.tsx';

const WIDTH = 372;
const TOTAL = { money: 'money', hours: 'hours', weeks: 'weeks-out' } as const;

interface Props {
  readonly name: keyof Limits;
  readonly title: string;
  readonly spread: Spread;
  readonly mark: (n: number) => string;
  readonly unitWord: string;
  readonly more?: string;
  /** The washer that is looked at, from zero. */
  readonly picked?: number | undefined;
  readonly children?: ComponentChildren;
}

function RodSection({ name, title, spread, mark, unitWord, more, picked, children }: Props) {
  const limit = useStore($limits)[name];
  const drawn = {
    values: [...spread.twenty],
    label: title,
    width: WIDTH,
    picked,
    ...(limit === undefined ? {} : { limit }),
  };
  return (
    <section>
      <h2>{title}</h2>
      <p>
        {saySpread(spread, name, limit)} {more}
      </p>
      {name === 'money' ? <MoneyRod {...drawn} /> : <Rod {...drawn} format={mark} unitWord={unitWord} />}
      <p class="small no-print">
        <Why asked={{ kind: 'total', id: TOTAL[name] }} name={title}>
          Why this much?
        </Why>
      </p>
      {children}
    </section>
  );
}

function MoneySection({ report }: { report: Report }) {
  const [place, go] = useState<number>();
  return (
    <RodSection
      name="money"
      title="Money, everything in"
      spread={report.money}
      mark={moneyMark}
      unitWord="dollars"
      picked={place === undefined ? undefined : place - 1}
    >
      <OneByOne report={report} place={place} go={go} />
    </RodSection>
  );
}

function WeeksRod({ report }: { report: Report }) {
  const spare = keepsAnother(report);
  return (
    <RodSection
      name="weeks"
      title={spare ? 'Weeks this lathe is apart' : 'Weeks the lathe is out of use'}
      spread={report.weeksOut}
      mark={weeksMark}
      unitWord="weeks"
      {...(spare ? { more: 'The other lathe keeps working meanwhile.' } : {})}
    />
  );
}

/** Money, hours and weeks as twenty washers each, with the owner's limits where they were set. */
export function Rods({ report }: { report: Report }) {
  return (
    <>
      <div class="rods" id="rods" tabIndex={-1}>
        <MoneySection report={report} />
        <Later>
          <RodSection
            name="hours"
            title="Hours of your own"
            spread={report.hours}
            mark={hoursMark}
            unitWord="hours"
          />
        </Later>
        <Later>
          <WeeksRod report={report} />
        </Later>
      </div>
      <p class="small no-print">
        Too much of one of them?{' '}
        <a href={to('ways/')} data-keep-path>
          The ways through
        </a>{' '}
        finds the answers that keep to your limits.
      </p>
      <p class="quiet small">
        Each washer is one of 20 ways this path could turn out, all equally likely. It is a picture of
        different outcomes, not of growth over time. A collar is a limit of your own, set on any question
        page. Money is once-only; what is paid every year stands apart.
      </p>
    </>
  );
}
