export type Result = 'ok' | 'look' | 'stop' | 'not-yet';

export interface ResultMarkProps {
  result: Result;
  /** The words beside the mark; "ok", "look", "stop" or "not yet" unless given. */
  word?: string;
  /** A count of none: the octagon stays empty. */
  empty?: boolean;
}

const WORDS: Record<Result, string> = { ok: 'ok', look: 'look', stop: 'stop', 'not-yet': 'not yet' };
const OCTAGON = 'M5.4 1.5h5.2l3.9 3.9v5.2l-3.9 3.9H5.4l-3.9-3.9V5.4z';

/** The shape of a result on a square of 16, for drawings that have their words beside them. */
export function MarkShape({ result, empty = false }: { result: Result; empty?: boolean }) {
  switch (result) {
    case 'ok':
      return <path d="M1.75 1.75h12.5v12.5H1.75zM4.6 8.2l2.5 2.6 4.5-5.4" />;
    case 'look':
      return <path d="M8 1.8 15 14.2H1zM8 6.2v4M8 11.6v1.3" />;
    case 'stop':
      return empty ? (
        <path d={OCTAGON} />
      ) : (
        <>
          <path class="mark-solid" d={OCTAGON} />
          <path class="mark-bar" d="M4.6 8h6.8" />
        </>
      );
    case 'not-yet':
      return <path class="mark-dashed" d="M2 2h12v12H2z" />;
  }
}

/** A check's result. Ink grows with gravity, and the word always stands beside the mark. */
export function ResultMark({ result, word = WORDS[result], empty = false }: ResultMarkProps) {
  return (
    <span class={`result result-${empty ? 'none' : result}`}>
      <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
        <MarkShape result={result} empty={empty} />
      </svg>
      <span class="result-word">{word}</span>
    </span>
  );
}
