/** What this device remembers. A browser may refuse to keep anything; nothing here throws. */

const PREFIX = 'halfnut/';

type Shelf = 'localStorage' | 'sessionStorage';

/** The remembered text, or undefined when there is none or the browser refuses. */
export function recall(name: string, shelf: Shelf = 'localStorage'): string | undefined {
  try {
    return window[shelf].getItem(PREFIX + name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** What became of a text to be kept: "full" where the browser has no more room, "refused" where it keeps nothing. */
export type Keeping = 'kept' | 'full' | 'refused';

/** Keeps the text and says what became of it. */
export function keep(name: string, text: string, shelf: Shelf = 'localStorage'): Keeping {
  try {
    window[shelf].setItem(PREFIX + name, text);
    return 'kept';
  } catch (fault) {
    return fault instanceof DOMException && fault.name === 'QuotaExceededError' && hasAny(shelf)
      ? 'full'
      : 'refused';
  }
}

/** Some browsers say "no more room" where they keep nothing at all: then nothing is there either. */
function hasAny(shelf: Shelf): boolean {
  try {
    return window[shelf].length > 0;
  } catch {
    return false;
  }
}

/** Keeps the text; false when the browser refuses. */
export const remember = (name: string, text: string, shelf: Shelf = 'localStorage'): boolean =>
  keep(name, text, shelf) === 'kept';

/** Takes a text off the shelf. */
export function forget(name: string, shelf: Shelf = 'localStorage'): void {
  try {
    window[shelf].removeItem(PREFIX + name);
  } catch {
    // What the browser does not let us touch is not kept for us either.
  }
}

/** Every name that begins so and is kept. */
export function namesUnder(start: string, shelf: Shelf = 'localStorage'): string[] {
  try {
    const names = Array.from({ length: window[shelf].length }, (_, at) => window[shelf].key(at) ?? '');
    return names.filter((name) => name.startsWith(PREFIX + start)).map((name) => name.slice(PREFIX.length));
  } catch {
    return [];
  }
}

/**
 * Calls back when another tab of this browser changes or takes away something; without a name when it takes all. Ends with
 * what it returns.
 */
export function onOtherTab(changed: (name?: string) => void): () => void {
  if (typeof window === 'undefined') return () => undefined;
  const heard = ({ key }: StorageEvent) => {
    if (key === null) changed();
    else if (key.startsWith(PREFIX)) changed(key.slice(PREFIX.length));
  };
  window.addEventListener('storage', heard);
  return () => window.removeEventListener('storage', heard);
}
