import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Check } from '../../calc/core/check.ts';
import { $accepted, accept, mayAccept, stillStands } from './acceptances.ts';

/** A stop that is accepted says why; where people could be harmed it cannot be accepted. */
export function Accept({ check }: { check: Check }) {
  if (check.result !== 'stop') return null;
  if (!mayAccept(check))
    return <span class="task-note">It keeps people from harm, so it cannot be accepted: put it right.</span>;
  return <Reason check={check} />;
}

function Reason({ check }: { check: Check }) {
  const acceptance = useStore($accepted)[check.id];
  const [kept, setKept] = useState(true);
  const stands = acceptance !== undefined && stillStands(check, acceptance);
  const [field, note] = [`accept-${check.id}`, `accept-${check.id}-note`];
  return (
    <span class="accept">
      <label for={field} class="no-print">
        I accept this because …<span class="visually-hidden"> ({check.label})</span>
      </label>
      <textarea
        id={field}
        class="no-print"
        rows={2}
        aria-describedby={note}
        value={acceptance?.because ?? ''}
        onChange={(event) => setKept(accept(check, event.currentTarget.value))}
      />
      <span id={note} role="status" class="small quiet no-print">
        {acceptance && !stands
          ? 'The figures are others than those you wrote this for. Read it again and write it anew. '
          : ''}
        {kept
          ? 'Kept on this device and printed with the plan; it is not in the link. Empty takes it back.'
          : 'This browser keeps nothing: the reason holds until you leave the page. Print the plan first.'}
      </span>
      {stands ? (
        <span class="accepted">
          <b>Accepted because:</b> {acceptance.because}
        </span>
      ) : null}
    </span>
  );
}
