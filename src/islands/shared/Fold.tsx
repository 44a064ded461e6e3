import { useStore } from '@nanostores/preact';
import { atom } from 'nanostores';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { $everything } from './in-turn.tsx';

/** As the style sheet folds. */
const FOLDS = 'screen and (max-width: 68.74rem)';

/** Whether long parts fold on this screen. */
const $folds = atom(false);

if (typeof window !== 'undefined') {
  const narrow = window.matchMedia(FOLDS);
  const look = (): void => $folds.set(narrow.matches);
  narrow.addEventListener('change', look);
  look();
}

interface Fold {
  readonly open: boolean;
  readonly toggle: () => void;
  /** "is-shut" on a phone or tablet until it is opened; wide screens and paper always show everything. */
  readonly shutClass: string;
  /** Whether what folds has ever been in sight: until then a phone is spared drawing it. */
  readonly drawn: boolean;
}

/** Whether a long part of the sheet is unfolded on a phone or tablet, where one part at a time fits. */
export function useFold(startsOpen = false): Fold {
  const [open, setOpen] = useState(startsOpen);
  const folds = useStore($folds);
  const [everything, setEverything] = useState($everything.get());
  // Not by useStore, which draws in a task of its own: paper would be laid out before it.
  useLayoutEffect(() => $everything.listen(setEverything), []);
  const drawn = useRef(false);
  drawn.current ||= open || !folds || everything;
  return {
    open,
    toggle: () => setOpen((was) => !was),
    shutClass: open ? '' : ' is-shut',
    drawn: drawn.current,
  };
}

/** What folds: drawn when it is first opened, and kept from then on. */
export function Folded({ fold, children }: { fold: Fold; children: ComponentChildren }) {
  return fold.drawn ? children : null;
}

/** Folds a part in and out; phones and tablets show it. */
export function FoldButton({ fold, what }: { fold: Fold; what: string }) {
  return (
    <button type="button" class="button small fold-button" aria-expanded={fold.open} onClick={fold.toggle}>
      {fold.open ? 'Hide' : 'Show'} {what}
    </button>
  );
}
