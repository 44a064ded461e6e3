import { useStore } from '@nanostores/preact';
import type { Working } from '../../calc/working.ts';
import { to } from '../shared/places.ts';
import { $working, type Sheet } from './job.ts';
import { type PaperSet, paperSets, printSet } from './paper.ts';

const SECTIONS = [
  ['rods', 'Money, hours, weeks'],
  ['findings', 'Stop and look'],
  ['money', 'What the money is made of'],
  ['stages', 'Stages and tasks'],
  ['make-first', 'Make-first list'],
  ['proof', 'Measure and prove'],
  ['parts', 'Parts list'],
  ['risks', 'What may go wrong'],
  ['checks', 'Checks'],
  ['settings', 'Settings sheet'],
  ['assumptions', 'What is assumed'],
  ['safety', 'Safety'],
  ['sources', 'Sources'],
] as const;

/** Whether this plan has a section, as far as it is known. */
function has({ report }: Sheet, working: Working | undefined, id: string): boolean {
  if (id === 'settings') return report.settings.length > 0;
  if (id === 'make-first') return working?.shelf.lines.length !== 0;
  return true;
}

function OnPaper({ hasSection }: { hasSection: (id: string) => boolean }) {
  const sets = (Object.keys(paperSets) as PaperSet[]).filter(hasSection);
  return (
    <ul class="list-plain on-paper" aria-label="On paper">
      <li>
        <b>On paper:</b>
      </li>
      {sets.map((set) => (
        <li key={set}>
          <button type="button" class="link-button" onClick={() => printSet(set)}>
            <span class="visually-hidden">Print: </span>
            {paperSets[set]}
          </button>
        </li>
      ))}
      <li>
        <a href={to('buy-list/')} data-keep-path>
          Buy list
        </a>
      </li>
    </ul>
  );
}

/** On this sheet: a link to each section that this plan has, and what can be printed by itself. */
export function Contents(sheet: Sheet) {
  const working = useStore($working);
  const hasSection = (id: string) => has(sheet, working, id);
  return (
    <nav class="plan-contents" aria-label="On this sheet">
      <ul class="list-plain">
        {SECTIONS.filter(([id]) => hasSection(id)).map(([id, name]) => (
          <li key={id}>
            <a href={`#${id}`}>{name}</a>
          </li>
        ))}
      </ul>
      <OnPaper hasSection={hasSection} />
    </nav>
  );
}
