import { useStore } from '@nanostores/preact';
import type { SizeClass } from '../../calc/core/machine.ts';
import type { Report } from '../../calc/evaluate.ts';
import { lathePlace, to } from '../shared/places.ts';
import { $path } from '../stores.ts';
import { isOutline } from './numbers.ts';

function Note({ size }: { size: SizeClass }) {
  return (
    <div class="notice">
      <p>
        <b>This is an outline, not yet your plan.</b> Nothing has been answered, so it stands on the reference
        answers and on typical figures of a {size} lathe. The ranges are wide because every answer is still
        possible.
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

/** Said while nothing has been answered: whose plan this is, and how to make it one's own. */
export function Outline({ report }: { report: Report }) {
  return isOutline(report) ? <Note size={report.machine.size} /> : null;
}

/** The same before the figures are there, to whoever comes with nothing: the head of the page knows (expected-notice.js). */
export function OutlineToCome() {
  const { size } = useStore($path);
  return (
    <div class="outline-to-come">
      <Note size={size} />
    </div>
  );
}
