import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { NamedPath } from '../../content/reference-paths.ts';
import { $path } from '../stores.ts';
import { $others, placeOf, putBeside } from './columns.ts';
import { PickOne } from './PickOne.tsx';

/** Owners made up for this site; fetched once somebody looks for something to put beside. */
export function StartingPoints({ full }: { full: boolean }) {
  const path = useStore($path);
  const others = useStore($others) ?? [];
  const [owners, setOwners] = useState<readonly NamedPath[]>([]);
  useEffect(() => {
    import('../../content/invented-owners.ts').then((content) => setOwners(content.inventedOwners));
  }, []);
  if (owners.length === 0) return <div class="compare-way is-coming" />;
  const free = owners.filter((owner) => placeOf(path, others, { kind: 'path', path: owner.path }) < 0);
  return (
    <PickOne
      label="An invented owner’s path"
      all={free.map(({ id, name, story }) => ({ id, name, means: story }))}
      full={full}
      onPick={(id) => {
        const owner = owners.find((each) => each.id === id);
        if (owner) putBeside({ kind: 'path', path: owner.path }, { name: owner.name });
      }}
    />
  );
}
