import { useStore } from '@nanostores/preact';
import { atom } from 'nanostores';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { factById } from '../../calc/facts.ts';
import type { Asked } from '../../calc/why-number.ts';
import { lathePlace } from '../shared/places.ts';
import { AnswerView, useAnswer } from './Answer.tsx';
import { whyPlace } from './asked.ts';

/** The number that is being explained, and what it is called where it was pressed. */
const $asked = atom<{ readonly asked: Asked; readonly name: string } | undefined>(undefined);

interface ButtonProps {
  readonly asked: Asked;
  /** What the number is, for a reader who hears the button without its row. */
  readonly name: string;
  /** The figure itself, or words such as "Why this much?". */
  readonly children: ComponentChildren;
}

/** A figure that can be asked why it is what it is. */
export function Why({ asked, name, children }: ButtonProps) {
  return (
    <button
      type="button"
      class="why-button"
      aria-haspopup="dialog"
      onClick={() => $asked.set({ asked, name })}
    >
      {children}
      <span class="visually-hidden">, why: {name}</span>
    </button>
  );
}

/** The sheet that explains the number last pressed. One on a page; Escape or its button shuts it, and the focus goes back. */
export function WhySheet() {
  const open = useStore($asked);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
  }, [open]);
  return (
    <dialog ref={dialog} class="why-sheet" aria-labelledby="why-title" onClose={() => $asked.set(undefined)}>
      {open ? <Sheet {...open} shut={() => dialog.current?.close()} /> : null}
    </dialog>
  );
}

/** Where a figure of the design gives way to what the owner read off the part, the way to that field. */
function OwnFigure({ asked }: { asked: Asked }) {
  const fact = asked.kind === 'figure' ? factById(asked.id) : undefined;
  if (!fact) return null;
  return (
    <p class="no-print">
      <a href={lathePlace(fact.id)} data-keep-path>
        Give your own figure on the lathe page: {fact.name}
      </a>
    </p>
  );
}

function Sheet({ asked, name, shut }: { asked: Asked; name: string; shut: () => void }) {
  const state = useAnswer(asked);
  return (
    <>
      <div class="why-head">
        <h2 id="why-title">Why: {name}</h2>
        <button type="button" class="button small" onClick={shut}>
          Close
        </button>
      </div>
      <AnswerView asked={asked} state={state} open={false} />
      <OwnFigure asked={asked} />
      <p class="no-print">
        <a href={whyPlace(asked)} data-keep-path>
          On a page of its own, every step unfolded
        </a>
      </p>
    </>
  );
}
