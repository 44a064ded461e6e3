import { toShown } from '../shared/currency.ts';
import { hoursMark, moneyMark } from '../shared/format.ts';
import type { StripScale } from './strip-scale.ts';

interface Ends {
  readonly less: string;
  readonly more: string;
}

function endsOf({ money, hours }: StripScale): Ends[] {
  const both = (text: string): Ends => ({ less: `−${text}`, more: `+${text}` });
  return [
    ...(money === undefined ? [] : [both(moneyMark(toShown(money)))]),
    ...(hours === undefined ? [] : [both(hoursMark(hours))]),
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
        16 of 20 ways lie between two ticks. A band across the centre line is no clear difference.
      </span>
    </div>
  );
}
