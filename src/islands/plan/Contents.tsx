import type { Report } from '../../calc/evaluate.ts';

const SECTIONS = [
  ['rods', 'Money, hours, weeks'],
  ['findings', 'Stop and look'],
  ['money', 'What the money is made of'],
  ['stages', 'Stages and tasks'],
  ['make-first', 'Make-first list'],
  ['parts', 'Parts list'],
  ['risks', 'What may go wrong'],
  ['checks', 'Checks'],
  ['settings', 'Settings sheet'],
  ['assumptions', 'What is assumed'],
  ['safety', 'Safety'],
  ['sources', 'Sources'],
] as const;

/** On this sheet: a link to each section that this plan has. */
export function Contents({ report }: { report: Report }) {
  const cuts = report.stages.some(({ tasks }) => tasks.some(({ lathe }) => lathe === 'cutting'));
  return (
    <nav class="plan-contents" aria-label="On this sheet">
      <ul class="list-plain">
        {SECTIONS.filter(([id]) => cuts || id !== 'make-first')
          .filter(([id]) => report.settings.length > 0 || id !== 'settings')
          .map(([id, name]) => (
            <li key={id}>
              <a href={`#${id}`}>{name}</a>
            </li>
          ))}
        <li>
          <button type="button" class="link-button" onClick={() => window.print()}>
            Print the sheet
          </button>
        </li>
      </ul>
    </nav>
  );
}
