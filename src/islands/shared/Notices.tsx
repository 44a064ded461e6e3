import { useStore } from '@nanostores/preact';
import { $notes, dismiss, type Note, startAfresh } from '../stores.ts';

const ABOUT_US = ['remembered', 'storage', 'other-tab'];

function Own({ note }: { note: Note }) {
  return (
    <div class="notice">
      <p>{note.say}</p>
      <p class="notice-actions">
        {note.kind === 'remembered' ? (
          <button type="button" class="button small" onClick={startAfresh}>
            Start with no answers
          </button>
        ) : null}
        <button type="button" class="button small" onClick={() => dismiss(note.kind)}>
          {note.kind === 'remembered' ? 'Go on with these' : 'I have seen this'}
        </button>
      </p>
    </div>
  );
}

function FromLink({ notes }: { notes: readonly Note[] }) {
  const close = () => {
    for (const { kind } of notes) dismiss(kind);
  };
  return (
    <div class="notice look">
      <p>
        <b>Part of this link could not be used.</b> What could be read is open.
      </p>
      <ul>
        {notes.map((note, at) => (
          <li key={at}>{note.say}</li>
        ))}
      </ul>
      <p class="notice-actions">
        <button type="button" class="button small" onClick={close}>
          I have seen this
        </button>
      </p>
    </div>
  );
}

/** How these answers got here: what a link held that could not be read, and what this device remembers or refuses to. */
export function Notices() {
  const notes = useStore($notes);
  const own = notes.filter(({ kind }) => ABOUT_US.includes(kind));
  const fromLink = notes.filter(({ kind }) => !ABOUT_US.includes(kind));
  return (
    <div class="notices" role="status">
      {fromLink.length > 0 ? <FromLink notes={fromLink} /> : null}
      {own.map((note) => (
        <Own key={note.kind} note={note} />
      ))}
    </div>
  );
}
