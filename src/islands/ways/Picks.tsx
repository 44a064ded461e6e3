import type { WaysThrough, WayThrough } from '../../calc/choosing.ts';
import { listed, weeks } from '../shared/format.ts';
import type { PlanFigures } from './plan-figures.ts';
import { sayAgainst, sayMargin, wayHours, wayMoney } from './words.ts';

export interface Pick {
  readonly way: WayThrough;
  readonly place: number;
  readonly title: string;
}

/** The ways worth a name: the cheapest, the quickest, the strongest; one way may be several of them. */
export function picksOf({ frontier, cheapest, quickest, stiffest }: WaysThrough): Pick[] {
  const named = [
    { way: cheapest, name: 'least money' },
    { way: quickest, name: 'fewest hours' },
    { way: stiffest, name: 'strongest and stiffest' },
  ];
  return frontier.flatMap((way, place) => {
    const names = named.filter((each) => each.way === way).map(({ name }) => name);
    const title = listed(names);
    return names.length > 0 ? [{ way, place, title: `${title[0]!.toUpperCase()}${title.slice(1)}` }] : [];
  });
}

/** What a way is in figures that sixteen of twenty outcomes stay under. */
export const sayFigures = ({ figures }: WayThrough): string =>
  `${wayMoney(figures.moneyP80)}, ${wayHours(figures.hoursP80)}, ${weeks(figures.weeksP80)} out of use`;

interface Props {
  readonly picks: readonly Pick[];
  readonly plan: PlanFigures;
}

/** The few to look at first. */
export function Picks({ picks, plan }: Props) {
  return (
    <section class="ways-picks">
      <h3>To look at first</h3>
      {picks.map(({ way, place, title }) => (
        <div class="rule-row ways-pick" key={place}>
          <h4>
            <span class="ways-number">{place + 1}</span> {title}
          </h4>
          <p class="figure-line">
            <b>{sayFigures(way)}</b>
          </p>
          <p class="small">
            Typically {sayAgainst(way.figures, plan)} than your plan; {sayMargin(way.figures.margin)} in
            strength and stiffness.{' '}
            <a href={`#way-${place + 1}`}>
              See way{'\u00a0'}
              {place + 1}
            </a>
          </p>
        </div>
      ))}
    </section>
  );
}
