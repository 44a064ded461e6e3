import { useId, useState } from 'preact/hooks';
import { annotate, type KeptPath, rename } from './kept-paths.ts';
import { NAME_LENGTH, NOTE_LENGTH } from './record.ts';

const REFUSED = 'This browser has no room for it. What was there before still stands.';

interface Props {
  readonly kept: KeptPath;
  readonly onDone: () => void;
}

/** The name of a path and what its owner has to say about it. */
export function NameForm({ kept, onDone }: Props) {
  const id = useId();
  const [name, setName] = useState(kept.named ? kept.name : '');
  const [note, setNote] = useState(kept.note);
  const [fault, setFault] = useState('');
  const keep = (event: Event) => {
    event.preventDefault();
    const done = [rename(kept.id, name), annotate(kept.id, note)].every((each) => each === 'kept');
    if (done) onDone();
    else setFault(REFUSED);
  };
  return (
    <form class="shelf-form" onSubmit={keep}>
      <div class="field">
        <label for={`${id}-name`}>Name</label>
        <input
          id={`${id}-name`}
          type="text"
          autoComplete="off"
          maxLength={Math.max(NAME_LENGTH, kept.name.length)}
          value={name}
          aria-describedby={`${id}-name-hint`}
          onInput={(event) => setName(event.currentTarget.value)}
        />
        <p class="field-hint" id={`${id}-name-hint`}>
          Up to {NAME_LENGTH} letters. Without one it is called after its answers. It stands at the head of
          the plan and of what is printed.
        </p>
      </div>
      <div class="field">
        <label for={`${id}-note`}>Note</label>
        <textarea
          id={`${id}-note`}
          rows={3}
          maxLength={Math.max(NOTE_LENGTH, kept.note.length)}
          value={note}
          aria-describedby={`${id}-note-hint`}
          onInput={(event) => setNote(event.currentTarget.value)}
        />
        <p class="field-hint" id={`${id}-note-hint`}>
          Up to {NOTE_LENGTH.toLocaleString('en-GB')} letters. It stays on this device and in files, never in
          a link.
        </p>
      </div>
      <p class="field-message stop" role="status">
        {fault}
      </p>
      <p class="shelf-actions">
        <button type="submit" class="button small primary">
          Keep
        </button>
        <button type="button" class="button small" onClick={onDone}>
          Leave it as it was
        </button>
      </p>
    </form>
  );
}
