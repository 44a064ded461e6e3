import { useStore } from '@nanostores/preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { forget, type Keeping, keep } from '../memory.ts';
import { Boundary } from '../shared/Boundary.tsx';
import { Notices } from '../shared/Notices.tsx';
import { to } from '../shared/places.ts';
import { useReady } from '../shared/ready.ts';
import { $open, $path, start } from '../stores.ts';
import { answeredIn, calledAfter } from './called.ts';
import { Damaged } from './Damaged.tsx';
import { Files } from './Files.tsx';
import { $damaged, $removed, $shelf, hasRoom, keepHere, startNew, undoRemove } from './kept-paths.ts';
import { MOST_PATHS } from './record.ts';
import { goTo, ShelfRow } from './ShelfRow.tsx';

const TROUBLE: Readonly<Record<Exclude<Keeping, 'kept'>, string>> = {
  full: 'This browser has no more room for this site. Save all as one file, then delete what you do not need.',
  refused:
    'This browser keeps nothing for this site, so there are no paths to come back to. The link in the address bar holds your answers; “Save all as one file” holds your prices and ticks too.',
};

/** Whether this browser keeps anything, found out by trying. */
function tryKeeping(): Keeping {
  const kept = keep('try', 'x'.repeat(2000));
  forget('try');
  return kept;
}

function Trouble() {
  const [kept, setKept] = useState<Keeping>('kept');
  useEffect(() => setKept(tryKeeping()), []);
  return kept === 'kept' ? null : <p class="notice look">{TROUBLE[kept]}</p>;
}

/** What was deleted last, to be put back. */
function PutBack({ onSaid }: { onSaid: (say: string) => void }) {
  const removed = useStore($removed);
  const button = useRef<HTMLButtonElement>(null);
  const known = useRef<number>();
  useEffect(() => {
    if (known.current !== undefined && removed.length > known.current) button.current?.focus();
    known.current = removed.length;
  }, [removed.length]);
  const [newest] = removed;
  const back = () =>
    onSaid(undoRemove() ? `“${newest?.name}” is back.` : 'This browser has no room for it just now.');
  return (
    <div role="status">
      {newest ? (
        <div class="notice">
          <p>
            “{newest.name}” is deleted, with its prices, ticks and notes. It can be put back until this tab is
            closed.
          </p>
          <p class="notice-actions">
            <button type="button" class="button small" ref={button} onClick={back}>
              Put it back
            </button>
          </p>
        </div>
      ) : null}
    </div>
  );
}

/** The open path while it is not among the kept ones. */
function NotKept() {
  const path = useStore($path);
  return (
    <div class="notice">
      <p>
        Open now and not kept: <b>{calledAfter(path)}</b>. Your first change keeps it.
      </p>
      <p class="notice-actions">
        <button type="button" class="button small" onClick={() => keepHere()}>
          Keep it among my paths
        </button>
      </p>
    </div>
  );
}

function Paths() {
  const paths = useStore($shelf);
  const { id, record } = useStore($open);
  const path = useStore($path);
  const [said, setSaid] = useState('');
  const damaged = useStore($damaged);
  const isBlank = answeredIn(path) + Object.keys(path.facts).length + path.owned.length === 0;
  const isKept = record !== undefined || isBlank;
  const begin = () => {
    startNew();
    goTo('lathe/');
  };
  return (
    <>
      <Trouble />
      <PutBack onSaid={setSaid} />
      <p role="status">{said}</p>
      {isKept ? null : <NotKept />}
      <section class="rule-section" aria-labelledby="kept-title">
        <h2 id="kept-title">Kept on this device</h2>
        <p class="quiet small">There is room for {MOST_PATHS}.</p>
        {paths.length === 0 ? <p>None yet. Your first answer or figure keeps one by itself.</p> : null}
        <ol class="list-plain shelf-list">
          {paths.map((kept) => (
            <ShelfRow
              key={kept.id}
              kept={kept}
              isOpen={kept.id === id}
              hasOrigin={paths.some((each) => each.id === kept.from?.id)}
              onSaid={setSaid}
            />
          ))}
        </ol>
        {hasRoom() ? null : (
          <p class="notice look">{MOST_PATHS} paths are the most. Save all as one file and delete some.</p>
        )}
        <p class="shelf-actions">
          <button type="button" class="button" onClick={begin}>
            Start a new path
          </button>
          {paths.length > 1 ? (
            <a class="button" href={to('compare/')} data-keep-path>
              Put them side by side
            </a>
          ) : null}
        </p>
      </section>
      <Damaged />
      <Files isKept={isKept} isEmpty={paths.length + damaged.length === 0 && isKept} />
    </>
  );
}

/** Notices that the list says in its own way. */
const SAID_HERE = ['remembered', 'elsewhere'];

/** The page of all paths of this device. */
export function Shelf() {
  useEffect(start, []);
  const ready = useReady();
  return (
    <div class="page shelf">
      <h1>Your paths</h1>
      <p class="lede">
        A path is one lathe with your answers, figures, prices and ticks. Keep as many as you weigh up: branch
        from one to answer otherwise, and neither touches the other.
      </p>
      <Notices without={SAID_HERE} />
      <Boundary what="the list of your paths">{ready ? <Paths /> : <p role="status">Looking …</p>}</Boundary>
      <noscript>
        <p>The list needs JavaScript: your paths are kept by this browser and nowhere else.</p>
      </noscript>
    </div>
  );
}
