import { useEffect, useRef, useState } from 'preact/hooks';
import { counted } from '../shared/format.ts';
import { loadFinder } from './load.ts';
import { Results } from './Results.tsx';
import type { Found } from './search.ts';

interface Answer {
  readonly asked: string;
  readonly found: readonly Found[];
  readonly near: readonly string[];
}
type State = 'empty' | 'looking' | 'failed' | Answer;

/** More than these are not listed. */
const MOST = 30;

const askedAt = (): string => new URLSearchParams(window.location.search).get('q')?.trim() ?? '';

/** The words go into the query, so that the address can be sent; the fragment belongs to the path. */
function putInAddress(asked: string): void {
  const { pathname, hash } = window.location;
  window.history.replaceState(
    null,
    '',
    `${pathname}${asked ? `?q=${encodeURIComponent(asked)}` : ''}${hash}`,
  );
}

async function answerTo(asked: string): Promise<Answer> {
  const finder = await loadFinder();
  const found = finder.find(asked, MOST);
  return { asked, found, near: found.length > 0 ? [] : finder.near(asked) };
}

function said(state: State): string {
  if (state === 'empty') return '';
  if (state === 'looking') return 'Looking through the book.';
  if (state === 'failed')
    return 'The text of the book could not be fetched. What you typed is kept: try again when you are connected.';
  const { asked, found } = state;
  if (found.length === 0) return `Nothing in the book answers to “${asked}”.`;
  const places = found.length < MOST ? counted(found.length, 'place') : `The ${MOST} likeliest places`;
  return `${places} for “${asked}”, best first.`;
}

/** Finds words in the book. The text is fetched at the first search. */
export function Find() {
  // The field keeps its own words: what is typed before this listens is not lost.
  const field = useRef<HTMLInputElement>(null);
  const [state, setState] = useState<State>('empty');
  const look = (words: string) => {
    const asked = words.trim();
    field.current!.value = words;
    putInAddress(asked);
    if (!asked) return setState('empty');
    setState('looking');
    answerTo(asked).then(setState, () => setState('failed'));
  };
  useEffect(() => {
    if (askedAt()) look(askedAt());
  }, []);
  const submit = (event: Event) => {
    event.preventDefault();
    look(field.current!.value);
  };
  return (
    <>
      <search>
        <form onSubmit={submit} method="get">
          <div class="field">
            <label for="find-words">Words to find</label>
            <input id="find-words" name="q" type="search" autocomplete="off" ref={field} />
          </div>
          <p>
            <button type="submit" class="button">
              Find
            </button>
          </p>
        </form>
      </search>
      <p role="status">{said(state)}</p>
      {typeof state === 'object' ? <Results {...state} ask={look} /> : null}
    </>
  );
}
