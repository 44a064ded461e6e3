import { useEffect, useRef, useState } from 'preact/hooks';
import { to } from '../shared/places.ts';
import { branch, duplicate, hasRoom, type KeptPath, openKept, remove } from './kept-paths.ts';
import { NameForm } from './NameForm.tsx';
import { aboutPath, daysOf } from './words.ts';

interface Props {
  readonly kept: KeptPath;
  readonly isOpen: boolean;
  /** Whether the path that it branched from is still there. */
  readonly hasOrigin: boolean;
  readonly onSaid: (say: string) => void;
}

/** Goes to a page with the path that is open now. */
export const goTo = (page: string): void => window.location.assign(`${to(page)}${window.location.hash}`);

const NO_ROOM = 'This browser has no room for another path. Save all as one file, then delete some.';

function Origin({ kept, hasOrigin }: { kept: KeptPath; hasOrigin: boolean }) {
  const { from } = kept;
  if (!from) return null;
  return (
    <p class="quiet">
      Branched from {hasOrigin ? <a href={`#path-${from.id}`}>{from.name}</a> : `“${from.name}”`}.
    </p>
  );
}

function Actions({ kept, onSaid, onName }: Pick<Props, 'kept' | 'onSaid'> & { onName: () => void }) {
  const { id, name, fragment } = kept;
  const hidden = <span class="visually-hidden">: {name}</span>;
  const full = !hasRoom();
  const copy = () => {
    const made = duplicate(id);
    onSaid(made?.kept === 'kept' ? `A copy of “${name}” stands first.` : NO_ROOM);
  };
  const branchOff = () => {
    if (branch(id)?.kept === 'kept') goTo('questions/');
    else onSaid(NO_ROOM);
  };
  const open = ({ ctrlKey, metaKey, shiftKey }: MouseEvent) => {
    if (!ctrlKey && !metaKey && !shiftKey) openKept(id);
  };
  return (
    <p class="shelf-actions">
      <a class="button small primary" href={`${to('plan/')}#${fragment}`} onClick={open}>
        Open{hidden}
      </a>
      <button type="button" class="button small" disabled={full} onClick={branchOff}>
        Branch from it{hidden}
      </button>
      <button type="button" class="button small" disabled={full} onClick={copy}>
        Duplicate{hidden}
      </button>
      <button type="button" class="button small" onClick={onName}>
        Name and note{hidden}
      </button>
      <button type="button" class="button small" onClick={() => remove(id)}>
        Delete{hidden}
      </button>
    </p>
  );
}

/** One path of the shelf: what it is called, what it holds, and what can be done with it. */
export function ShelfRow({ kept, isOpen, hasOrigin, onSaid }: Props) {
  const [naming, setNaming] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const wasNaming = useRef(false);
  useEffect(() => {
    if (wasNaming.current && !naming) heading.current?.focus();
    wasNaming.current = naming;
  }, [naming]);
  const days = daysOf(kept);
  return (
    <li class="shelf-path" id={`path-${kept.id}`} tabIndex={-1}>
      <h3 ref={heading} tabIndex={-1}>
        {kept.name} {isOpen ? <span class="shelf-open">open now</span> : null}
      </h3>
      <p>{aboutPath(kept)}.</p>
      {days ? <p class="quiet">{days}.</p> : null}
      <Origin kept={kept} hasOrigin={hasOrigin} />
      {kept.unread.length > 0 ? (
        <p class="look">Part of it cannot be read by this site any more: {kept.unread.join(' ')}</p>
      ) : null}
      {naming ? (
        <NameForm kept={kept} onDone={() => setNaming(false)} />
      ) : (
        <>
          {kept.note ? <p class="shelf-note">{kept.note}</p> : null}
          <Actions kept={kept} onSaid={onSaid} onName={() => setNaming(true)} />
        </>
      )}
    </li>
  );
}
