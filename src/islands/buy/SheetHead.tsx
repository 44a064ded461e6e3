import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { encodePath } from '../../link/encode.ts';
import { setRunningHeader } from '../plan/running-header.ts';
import { planName } from '../plan/words.ts';
import { LinkOnPaper } from '../shared/LinkOnPaper.tsx';
import { to } from '../shared/places.ts';
import { today } from './day.ts';

/** Whose list, at which prices, of which day: on paper only, at the head of each page and once with the link. */
export function SheetHead({ report }: { report: Report }) {
  const name = planName(report);
  const { id, basis } = report.edition;
  const [day] = useState(today);
  useEffect(() => {
    setRunningHeader(`Buy list: ${name.slice(0, 50)}  |  price edition ${id}  |  printed ${day}`);
  }, [name, id, day]);
  const link = new URL(`${to('buy-list/')}#${encodePath(report.path)}`, window.location.href).href;
  return (
    <div class="print-only">
      <p>
        {name}. Prices of edition {id}: {basis} Printed {day}.
      </p>
      <LinkOnPaper link={link} />
    </div>
  );
}
