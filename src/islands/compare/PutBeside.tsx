import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { SideBySide } from '../../calc/choosing.ts';
import { CONVERSION } from '../../calc/core/alternative.ts';
import type { Report } from '../../calc/evaluate.ts';
import { counted } from '../shared/format.ts';
import { $path } from '../stores.ts';
import { $others, isFull, placeOf, putBeside } from './columns.ts';
import { KeptPaths } from './KeptPaths.tsx';
import { OtherwiseAnswered } from './OtherwiseAnswered.tsx';
import { PastedLink } from './PastedLink.tsx';
import { PickOne } from './PickOne.tsx';
import { StartingPoints } from './StartingPoints.tsx';

/** What else may answer the wish, what speaks for itself on these answers first. */
function Alternatives({ side, full }: { side: SideBySide | undefined; full: boolean }) {
  const path = useStore($path);
  const others = useStore($others) ?? [];
  if (!side) {
    return (
      <div class="compare-way is-coming">
        <p role="status">Working out what else may answer the wish …</p>
      </div>
    );
  }
  const byId = new Map(side.alternatives.map((each) => [each.id, each]));
  const all = side.order.filter((id) => id !== CONVERSION).flatMap((id) => byId.get(id) ?? []);
  const free = all.filter(({ id }) => placeOf(path, others, { kind: 'alternative', id }) < 0);
  return (
    <PickOne
      label="Something other than a conversion"
      all={free.map(({ id, name, means, first }) => ({
        id,
        name,
        means: first ? `${means} Looked at first, because ${first}.` : means,
        group: first ? 'Worth a look first, on your answers' : 'The others',
      }))}
      full={full}
      onPick={(id) => putBeside({ kind: 'alternative', id })}
    />
  );
}

interface Props {
  readonly report: Report;
  readonly side: SideBySide | undefined;
  readonly isOpen: boolean;
  readonly onToggle: (open: boolean) => void;
}

/** What may stand beside the open path, and how to put it there. */
export function PutBeside({ report, side, isOpen, onToggle }: Props) {
  const others = useStore($others) ?? [];
  const [wasOpen, setWasOpen] = useState(isOpen);
  const full = isFull(others);
  return (
    <details
      class="compare-offers no-print"
      open={isOpen}
      onToggle={(event) => {
        if (event.currentTarget.open) setWasOpen(true);
        onToggle(event.currentTarget.open);
      }}
    >
      <summary>Put something beside A ({counted(others.length + 1, 'column')} of 4)</summary>
      <p class="field-hint" role="status">
        {full ? 'Four columns are the most that can be weighed at once. Take one away first.' : ''}
      </p>
      {wasOpen ? (
        <div class="compare-ways">
          <OtherwiseAnswered report={report} full={full} />
          <Alternatives side={side} full={full} />
          <KeptPaths full={full} />
          <StartingPoints full={full} />
          <PastedLink full={full} />
        </div>
      ) : null}
    </details>
  );
}
