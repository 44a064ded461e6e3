import { toShown } from '../shared/currency.ts';
import { hoursMark, moneyMark } from '../shared/format.ts';
import type { StripScale } from './strip-scale.ts';

interface Ends {
  readonly less: string;
  readonly more: string;
}

function endsOf({ money, hours, risks }: StripScale): Ends[] {
  const both = (text: string): Ends => ({ less: `−${text}`, more: `+${text}` });
  return [
    ...(money === undefined ? [] : [both(moneyMark(toShown(money)))]),
    ...(hours === undefined ? [] : [both(hoursMark(hours))]),
    ...(risks === undefined ? [] : [both(`${risks} of 20`)]),
  ];
}

/** Names the scale that every strip below is drawn on. */
export function StripHead({ scale }: { scale: StripScale | undefined }) {
  const ends = scale ? endsOf(scale) : [];
  return (
    <div class="strip-head">
      <span class="quiet">Compared with the plan as it is.</span>
      <span class="strip-scale" aria-hidden="true">
        <span>
          <b>less</b>
          {ends.map(({ less }) => (
            <span key={less}>{less}</span>
          ))}
        </span>
        <span>
          <b>more</b>
          {ends.map(({ more }) => (
            <span key={more}>{more}</span>
          ))}
        </span>
      </span>
      <span class="quiet strip-key">
        Most ways lie between two ticks: 16 of 20. Ticks on both sides of the centre line: no clear
        difference.
      </span>
    </div>
  );
}
