import { useStore } from '@nanostores/preact';
import { $ownNotes, dismissOwn, dropDamaged } from '../kept-lines.ts';
import { $notes, dismiss, ELSEWHERE, type Note, TAKEN_UP } from '../notes.ts';
import { saveFile } from '../save-file.ts';
import { $setAside } from '../set-aside.ts';
import { dismissElsewhere, keepNow, startNew, takeOffered, takeOtherTab } from '../stores.ts';
import { useReady } from './ready.ts';

const ABOUT_US = ['remembered', 'storage', 'other-tab', 'newer', 'elsewhere', 'own-offered', 'apart'];

/** What can be done about a notice, beside having seen it. */
const ANSWERS: Readonly<Record<string, { readonly say: string; readonly act: () => void }>> = {
  remembered: { say: 'Start with no answers', act: startNew },
  elsewhere: { say: 'Keep it among my paths', act: keepNow },
  'other-tab': { say: 'Show what the other tab has', act: takeOtherTab },
  'own-offered': { say: 'Take those of the link', act: takeOffered },
};

function Own({ note }: { note: Note }) {
  const answer = ANSWERS[note.kind];
  const seen = () => (note.kind === 'elsewhere' ? dismissElsewhere() : dismiss(note.kind));
  return (
    <p class="notice slight">
      {note.say}{' '}
      {answer ? (
        <button type="button" class="link-button" onClick={answer.act}>
          {answer.say}
        </button>
      ) : null}{' '}
      <button type="button" class="link-button" onClick={seen}>
        {note.kind === 'remembered' ? 'Go on with these' : 'I have seen this'}
      </button>
    </p>
  );
}

/** What this device keeps of quotes and orders, or refuses to; a damaged text can be saved before it is dropped. */
function Kept({ note }: { note: Note }) {
  const damaged = note.kind === 'own-damaged';
  return (
    <div class="notice look">
      <p>{note.say}</p>
      <p class="notice-actions">
        {damaged ? (
          <button
            type="button"
            class="button small"
            onClick={() => saveFile('set-aside.txt', $setAside.get().join('\n'))}
          >
            Save the damaged text
          </button>
        ) : null}
        <button
          type="button"
          class="button small"
          onClick={() => (damaged ? dropDamaged() : dismissOwn(note.kind))}
        >
          {damaged ? 'Throw it away' : 'I have seen this'}
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

/** Until the script listens, the room of the notice that the head of the page expects (`expected-notice.js`), unseen. */
function Room({ without }: { without: readonly string[] }) {
  const expected = [ELSEWHERE, TAKEN_UP].filter(({ kind }) => !without.includes(kind));
  return (
    <div aria-hidden="true">
      {expected.map((note) => (
        <div key={note.kind} class={`notice-room is-${note.kind}`}>
          <Own note={note} />
        </div>
      ))}
    </div>
  );
}

/** How these answers got here: what a link held that could not be read, and what this device remembers or refuses to. A page may leave kinds out. */
export function Notices({ without = [] }: { without?: readonly string[] }) {
  const notes = useStore($notes);
  const kept = useStore($ownNotes);
  const own = notes.filter(({ kind }) => ABOUT_US.includes(kind) && !without.includes(kind));
  const fromLink = notes.filter(({ kind }) => !ABOUT_US.includes(kind));
  const ready = useReady();
  return (
    <>
      {ready ? null : <Room without={without} />}
      <div class="notices" role="status">
        {fromLink.length > 0 ? <FromLink notes={fromLink} /> : null}
        {own.map((note) => (
          <Own key={note.kind} note={note} />
        ))}
        {kept.map((note) => (
          <Kept key={note.kind} note={note} />
        ))}
      </div>
    </>
  );
}
