import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { KeptPath } from '../shelf/kept-paths.ts';
import { $open, $path } from '../stores.ts';
import { $others, placeOf, putBeside } from './columns.ts';
import { PickOne } from './PickOne.tsx';

/** The shelf, fetched once somebody looks for something to put beside. */
function useShelf(): readonly KeptPath[] {
  const [kept, setKept] = useState<readonly KeptPath[]>([]);
  useEffect(() => {
    let isWanted = true;
    let end: () => void = () => undefined;
    import('../shelf/kept-paths.ts').then(({ $shelf }) => {
      if (isWanted) end = $shelf.subscribe(setKept);
    });
    return () => {
      isWanted = false;
      end();
    };
  }, []);
  return kept;
}

const meansOf = ({ note, changed }: KeptPath): string =>
  note || (changed ? `Changed last on ${changed.slice(0, 10)}.` : 'Kept by an earlier visit.');

/** Other paths that this device keeps. */
export function KeptPaths({ full }: { full: boolean }) {
  const path = useStore($path);
  const { id: open } = useStore($open);
  const others = useStore($others) ?? [];
  const kept = useShelf();
  const free = kept.filter(
    (each) => each.id !== open && placeOf(path, others, { kind: 'path', path: each.path }) < 0,
  );
  return (
    <PickOne
      label="Another of your paths"
      all={free.map((each) => ({ id: each.id, name: each.name, means: meansOf(each) }))}
      full={full}
      onPick={(id) => {
        const one = kept.find((each) => each.id === id);
        if (one) putBeside({ kind: 'path', path: one.path }, { shelf: id, name: one.name });
      }}
    />
  );
}
