import type { Report } from '../../calc/evaluate.ts';
import { lathePlace, to } from '../shared/places.ts';
import { isOutline } from './numbers.ts';

/** Said while nothing has been answered: whose plan this is, and how to make it one's own. */
export function Outline({ report }: { report: Report }) {
  if (!isOutline(report)) return null;
  return (
    <div class="notice">
      <p>
        <b>This is an outline, not yet your plan.</b> Nothing has been answered, so it stands on the reference
        answers and on typical figures of a {report.machine.size} lathe. The ranges are wide because every
        answer is still possible.
      </p>
      <p class="notice-actions">
        <a class="button small" href={lathePlace()} data-keep-path>
          Start with your lathe
        </a>
        <a class="button small" href={to('quick/')} data-keep-path>
          Quick sheet
        </a>
        <a class="button small" href={to('questions/')} data-keep-path>
          Every question
        </a>
      </p>
    </div>
  );
}
