import { atom, type ReadableAtom } from 'nanostores';
import { type ComponentChildren, options } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { onPrint } from './on-print.ts';

/** Milliseconds at a stretch: four times as long on an old phone, and as long again to lay it out. */
const BUDGET = 4;

/** Parts of a page that wait for their turn, in the order of the page. */
const waiting: (() => void)[] = [];
/** Where the next to wait is put: parts of a part come before what follows it. */
let place = 0;
let going = false;

/** Paper does not wait, and folds nothing away: from then on everything is drawn, at once. */
export const $everything = atom(false);

/** Draws for a while, then lets the page answer. */
function goOn(until = performance.now() + BUDGET): void {
  const first = waiting.shift();
  place = 0;
  going = first !== undefined;
  if (!first) return;
  first();
  // By then it is drawn.
  queueMicrotask(() => (performance.now() < until ? goOn(until) : window.setTimeout(goOn)));
}

/** Draws whatever waits, before it returns: paper shows all of it, and is laid out as soon as it was told. */
export function drawAll(): void {
  const asEver = options.debounceRendering;
  options.debounceRendering = (draw) => draw();
  $everything.set(true);
  for (const draw of waiting.splice(0)) draw();
  if (asEver) options.debounceRendering = asEver;
  else delete options.debounceRendering;
}

function wait(draw: () => void): () => void {
  if ($everything.get()) {
    draw();
    return () => {};
  }
  waiting.splice(place, 0, draw);
  place += 1;
  if (!going) {
    going = true;
    window.setTimeout(goOn);
  }
  return () => {
    const at = waiting.indexOf(draw);
    if (at < 0) return;
    waiting.splice(at, 1);
    if (at < place) place -= 1;
  };
}

if (typeof window !== 'undefined') onPrint(drawAll);

/**
 * A part of a long page: parts are drawn one after another, so that the first of them can be read, and the page answers,
 * before the last is there.
 */
export function Later({ children }: { children: ComponentChildren }) {
  const [drawn, setDrawn] = useState($everything.get());
  useLayoutEffect(() => (drawn ? undefined : wait(() => setDrawn(true))), []);
  return drawn ? children : null;
}

/** The value of a store for a part that others go before: the last one until its turn comes. */
export function useInTurn<Value>(store: ReadableAtom<Value>): Value {
  const [shown, setShown] = useState<{ readonly value: Value }>({ value: store.get() });
  useLayoutEffect(() => {
    let giveUp = (): void => {};
    const show = (): void => setShown({ value: store.get() });
    const end = store.listen(() => {
      giveUp();
      giveUp = wait(show);
    });
    if (store.get() !== shown.value) show();
    return () => {
      giveUp();
      end();
    };
  }, [store]);
  return shown.value;
}
