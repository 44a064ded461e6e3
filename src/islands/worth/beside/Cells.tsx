import { yearOf } from '../../beside/words.ts';
import { exactMoney, hoursRange, middleHalf } from '../../shared/format.ts';
import { paybackText } from '../words.ts';
import type { Column } from './columns.ts';

export function PerYear({ column }: { column: Column }) {
  const year = yearOf(column);
  if (!year) return <>{column.paidByUse ? 'By the piece: name your parts above.' : 'Nothing more.'}</>;
  return (
    <>
      half of them: <b class="figure">{year[0]}</b> and <b class="figure">{year[1]}</b>
    </>
  );
}

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
