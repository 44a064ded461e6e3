import type { ComponentChildren } from 'preact';

/** Marks of the plan that are drawn for paper: a box to tick, a blank to fill in, scissors for cut metal. */

/** A box to tick by hand; crossed where it is ticked already. The words beside it say so as well. */
export const TickBox = ({ done = false }: { done?: boolean }) => (
  <span class={done ? 'tick-box is-done' : 'tick-box'} aria-hidden="true">
    {done ? (
      <svg viewBox="0 0 10 10" aria-hidden="true">
        <path d="M1 1l8 8M9 1 1 9" />
      </svg>
    ) : null}
  </span>
);

/** Words beside a box to tick; further lines stay clear of the box. */
export const Ticked = ({ children, done = false }: { children: ComponentChildren; done?: boolean }) => (
  <span class="ticked">
    <TickBox done={done} />
    <span>
      {children}
      {done ? <span class="visually-hidden"> (done)</span> : null}
    </span>
  </span>
);

/** A ruled line to write on, with what is written there said for a reader who hears it. */
export const Blank = ({ what }: { what: string }) => (
  <span class="write-in">
    <span class="visually-hidden">{what}: to be filled in by hand</span>
  </span>
);

/** Open scissors, for what cannot be undone. */
export const Scissors = () => (
  <svg class="scissors" width="18" height="14" viewBox="0 0 18 14" aria-hidden="true">
    <circle cx="3" cy="3" r="2.1" />
    <circle cx="3" cy="11" r="2.1" />
    <path d="M4.8 4.2 17 11.4M4.8 9.8 17 2.6" />
  </svg>
);

/** The scissors and the words that go with them. */
export const CannotUndo = () => (
  <span class="cannot-undo">
    <Scissors />
    cannot be undone
  </span>
);

export const MayStop = () => (
  <svg class="triangle" viewBox="0 0 14 12" aria-hidden="true">
    <path d="M1 1h12L7 11z" />
  </svg>
);
