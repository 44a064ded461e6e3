import { useState } from 'preact/hooks';

interface Fold {
  readonly open: boolean;
  readonly toggle: () => void;
  /** "is-shut" on a phone or tablet until it is opened; wide screens and paper always show everything. */
  readonly shutClass: string;
}

/** Whether a long part of the sheet is unfolded on a phone or tablet, where one part at a time fits. */
export function useFold(startsOpen = false): Fold {
  const [open, setOpen] = useState(startsOpen);
  return { open, toggle: () => setOpen((was) => !was), shutClass: open ? '' : ' is-shut' };
}

/** Folds a part in and out; phones and tablets show it. */
export function FoldButton({ fold, what }: { fold: Fold; what: string }) {
  return (
    <button type="button" class="button small fold-button" aria-expanded={fold.open} onClick={fold.toggle}>
      {fold.open ? 'Hide' : 'Show'} {what}
    </button>
  );
}
