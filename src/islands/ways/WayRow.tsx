import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { WayThrough } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';
import { counted, weeks } from '../shared/format.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { asCell, asRow, asRowHead } from '../shared/table-roles.ts';
import { $path } from '../stores.ts';
import { besideMine, differsFrom, isOpenNow, linkOf, openWay } from './open-way.ts';
import type { PlanFigures } from './plan-figures.ts';
import { type Difference, sayAgainst, sayMargin, sayWhy, wayHours, wayMoney } from './words.ts';

function CopyLink({ way, number }: { way: WayThrough; number: number }) {
  const [said, setSaid] = useState('');
  const link = linkOf(way);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setSaid('Copied.');
    } catch {
      setSaid('This browser does not let us copy: use the link beside it.');
    }
  };
  return (
    <>
      <button type="button" class="link-button" onClick={copy}>
        Copy the link<span class="visually-hidden"> of way {number}</span>
      </button>{' '}
      <a href={link} class="no-print">
        Its plan<span class="visually-hidden"> of way {number}</span>
      </a>{' '}
      <a href={besideMine(way)} class="no-print">
        Put it beside mine<span class="visually-hidden">: way {number}</span>
      </a>{' '}
      <span role="status">{said}</span>
    </>
  );
}

function Differs({ differing }: { differing: readonly Difference[] }) {
  if (differing.length === 0) return <p class="small">Its answers are those of your plan.</p>;
  return (
    <details>
      <summary>Differs from your plan in {counted(differing.length, 'answer')}</summary>
      <ul class="small">
        {differing.map(({ decision, name, here, there }) => (
          <li key={decision}>
            <a href={placeOfQuestion(decision)} data-keep-path>
              {name}
            </a>
            : {here} instead of {there}
          </li>
        ))}
      </ul>
    </details>
  );
}

interface Props {
  readonly way: WayThrough;
  readonly cheaper: WayThrough | undefined;
  readonly number: number;
  readonly proved: boolean;
  readonly title: string | undefined;
  readonly report: Report;
  readonly plan: PlanFigures;
}

function Figure({ label, most, typical }: { label: string; most: string; typical: string }) {
  return (
    <td {...asCell} class="number" data-label={label}>
      <span>
        <b>{most}</b>
        <span class="row-ask">{typical}</span>
      </span>
    </td>
  );
}

/** One way in the list: its figures, why it is there, what it changes, and how to take it. */
export function WayRow({ way, cheaper, number, proved, title, report, plan }: Props) {
  const path = useStore($path);
  const { figures } = way;
  const differing = differsFrom(report, way);
  const isOpen = isOpenNow(way, path);
  return (
    <tr {...asRow} id={`way-${number}`} tabIndex={-1} class={isOpen ? 'is-open-way' : undefined}>
      <th {...asRowHead}>
        <span class="ways-number">{number}</span>
        {title ? <span class="row-ask">{title}</span> : null}
      </th>
      <Figure
        label="Money"
        most={wayMoney(figures.moneyP80)}
        typical={`typically ${wayMoney(figures.money)}`}
      />
      <Figure
        label="Hours"
        most={wayHours(figures.hoursP80)}
        typical={`typically ${wayHours(figures.hours)}`}
      />
      <td {...asCell} class="number" data-label="Out of use">
        {weeks(figures.weeksP80)}
      </td>
      <td {...asCell} class="ways-why">
        <p>
          {sayWhy(way, cheaper, number, proved)} Strength and stiffness: {sayMargin(figures.margin)}.
        </p>
        {isOpen ? (
          <p>
            <b>This is your plan now.</b>
          </p>
        ) : (
          <>
            <p class="small quiet">Against your plan, typically {sayAgainst(figures, plan)}.</p>
            <Differs differing={differing} />
          </>
        )}
        <p class="ways-actions no-print">
          {isOpen ? null : (
            <button type="button" class="button small" onClick={() => openWay(way, number, differing.length)}>
              Open this way<span class="visually-hidden">, way {number}</span>
            </button>
          )}
          <CopyLink way={way} number={number} />
        </p>
      </td>
    </tr>
  );
}
