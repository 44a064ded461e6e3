import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { encodePath } from '../../link/encode.ts';
import { today } from '../buy/day.ts';
import { setRunningHeader } from '../plan/running-header.ts';
import { LinkOnPaper } from './LinkOnPaper.tsx';
import { to } from './places.ts';
import { usePlanName } from './use-plan-name.ts';

interface Props {
  readonly report: Report;
  /** What the sheet is: "Buy list". */
  readonly title: string;
  /** The page it comes from, without the leading slash. */
  readonly page: string;
  /** What stands behind the path in the link: the other columns of a comparison. */
  readonly tail?: string;
}

/** Whose sheet, at which prices, of which day: on paper only, at the head of each page and once with the link. */
export function PaperHead({ report, title, page, tail = '' }: Props) {
  const name = usePlanName(report);
  const { id, basis } = report.edition;
  const [day] = useState(today);
  useEffect(() => {
    setRunningHeader(`${title}: ${name.slice(0, 50)}  |  price edition ${id}  |  printed ${day}`);
  }, [title, name, id, day]);
  const link = new URL(`${to(page)}#${encodePath(report.path)}${tail}`, window.location.href).href;
  return (
    <div class="print-only">
      <p>
        {name}. Prices of edition {id}: {basis} Printed {day}.
      </p>
      <LinkOnPaper link={link} />
    </div>
  );
}
