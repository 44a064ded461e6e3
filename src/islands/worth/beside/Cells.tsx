import type { Spread } from '../../../calc/evaluate.ts';
import { SKILLS } from '../../guide/OptionBlock.tsx';
import { toShown } from '../../shared/currency.ts';
import {
  exactMoney,
  hoursMark,
  hoursRange,
  middleHalf,
  moneyMark,
  moneyRange,
  ofTwenty,
  weeksMark,
  weeksRange,
} from '../../shared/format.ts';
import { paybackText } from '../words.ts';
import type { Column } from './columns.ts';
import { SmallRod } from './SmallRod.tsx';

const CAN = { yes: 'Yes.', partly: 'Partly.', no: 'No.' } as const;

export function Able({ column, row }: { column: Column; row: keyof Column['abilities'] }) {
  const { can, say } = column.abilities[row];
  return (
    <>
      <b>{CAN[can]}</b> {say}
    </>
  );
}

/** What is drawn on rods, a row each. */
export const MEASURES = {
  money: {
    label: 'Money, everything in',
    half: (from: number, to: number) => moneyRange(from, to),
    shown: toShown,
    mark: moneyMark,
    none: 'Nothing once.',
  },
  hours: {
    label: 'Hours of your own',
    half: hoursRange,
    shown: (n: number) => n,
    mark: hoursMark,
    none: 'None.',
  },
  weeksOut: {
    label: 'Weeks without the lathe',
    half: weeksRange,
    shown: (n: number) => n,
    mark: (n: number) => `${weeksMark(n)} wk`,
    none: 'The lathe stays in use.',
  },
} as const;

export type MeasureId = keyof typeof MEASURES;

const isNothing = ({ twenty }: Spread): boolean => (twenty[twenty.length - 1] ?? 0) < 0.05;

export function Measured({ column, id, end }: { column: Column; id: MeasureId; end: number }) {
  const { half, shown, mark, none, label } = MEASURES[id];
  const spread = column[id];
  if (isNothing(spread)) return <>{none}</>;
  const { from, to } = middleHalf(spread.twenty);
  const said = half(from, to);
  return (
    <>
      <SmallRod
        values={spread.twenty.map(shown)}
        end={end}
        ends={[mark(0), mark(end)]}
        say={`${column.name}, ${label.toLowerCase()}: 20 ways on a scale from ${mark(0)} to ${mark(end)}. Half of them: ${said}.`}
      />
      <span class="small">
        half of them: <b class="figure">{said}</b>
      </span>
    </>
  );
}

export function PerYear({ column }: { column: Column }) {
  const { perYear } = column;
  if (!perYear) return <>{column.paidByUse ? 'By the piece: name your parts above.' : 'Nothing more.'}</>;
  const [money, hours] = [middleHalf(perYear.money.twenty), middleHalf(perYear.hours.twenty)];
  return (
    <>
      half of them: <b class="figure">{moneyRange(money.from, money.to)}</b> and{' '}
      <b class="figure">{hoursRange(hours.from, hours.to)}</b>
    </>
  );
}

export function RisksCell({ column }: { column: Column }) {
  if (column.risks.length === 0) return <>None that we count.</>;
  return (
    <ul class="list-plain beside-risks">
      {column.risks.map(({ id, name, ofTwenty: count }) => (
        <li key={id}>
          {name}: <b class="figure">{count < 1 ? 'under 1 of 20' : ofTwenty(count)}</b>
        </li>
      ))}
    </ul>
  );
}

export const SkillCell = ({ column }: { column: Column }) => <>{SKILLS[column.skill]}</>;

export const Lacks = ({ column }: { column: Column }) => (
  <ul class="list-plain beside-risks">
    {column.lacks.map((say) => (
      <li key={say}>{say}</li>
    ))}
  </ul>
);

export interface ReturnProps {
  readonly column: Column;
  readonly hobby: boolean;
  readonly named: boolean;
}

export function SavedCell({ column, named }: ReturnProps) {
  if (!named) return <>Name your parts above.</>;
  if (!column.saved) return <>Nobody can say from the parts alone.</>;
  const { from, to } = middleHalf(column.saved.twenty);
  return (
    <>
      half of them: <b class="figure">{hoursRange(from, to)}</b>
    </>
  );
}

/** Pay-back with the hours of building counted, at each value of an hour. */
export function PaybackCell({ column, hobby, named }: ReturnProps) {
  if (hobby) return <>Hidden: the hours are the hobby.</>;
  if (!named) return <>Name your parts above.</>;
  if (column.payback.length === 0) return <>Nobody can say from the parts alone.</>;
  return (
    <ul class="list-plain beside-risks">
      {column.payback
        .filter(({ buildingCounts }) => buildingCounts)
        .map((each) => (
          <li key={each.perHour}>
            at {exactMoney(each.perHour)}: <b>{paybackText(each)}</b>
          </li>
        ))}
    </ul>
  );
}
