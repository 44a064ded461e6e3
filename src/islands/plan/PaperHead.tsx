import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import { encodePath } from '../../link/encode.ts';
import { today } from '../buy/day.ts';
import { LinkOnPaper } from '../shared/LinkOnPaper.tsx';
import { usePlanName } from '../shared/use-plan-name.ts';
import { $path } from '../stores.ts';
import { addressOf } from './address-of.ts';
import { $paper, paperSets } from './paper.ts';
import { setRunningHeader } from './running-header.ts';

const HEAD_LENGTH = 58;

/** Fits at the head of a page beside the page number. */
const shortened = (name: string, length: number): string =>
  name.length <= length ? name : `${name.slice(0, length - 1)}…`;

/** The line at the head of every page; true where this browser can print it. */
function useRunningHeader(title: string, name: string, edition: string, day: string): boolean {
  const [running, setRunning] = useState(false);
  useEffect(() => {
    const said = shortened(title ? `${title}: ${name}` : name, HEAD_LENGTH);
    setRunning(setRunningHeader(`${said}  |  price edition ${edition}  |  printed ${day}`));
  }, [title, name, edition, day]);
  return running;
}

/** The head of what is printed, on paper only: which set of which path, at which prices, when, and its link. */
export function PaperHead({ report }: { report: Report }) {
  const set = useStore($paper);
  const link = addressOf(encodePath(useStore($path)));
  const [day] = useState(today);
  const [name, title] = [usePlanName(report), paperSets[set]];
  const { id, basis } = report.edition;
  const running = useRunningHeader(set === 'whole' ? '' : title, name, id, day);
  return (
    <div class="print-only paper-head">
      {running ? null : (
        <p class="print-header">
          <b>{name}</b>
          <span>price edition {id}</span>
          <span>printed {day}</span>
        </p>
      )}
      <p class="paper-title">{title}</p>
      <p>
        {name}. Prices of edition {id}: {basis} Printed {day}.
      </p>
      <LinkOnPaper link={link} />
    </div>
  );
}
