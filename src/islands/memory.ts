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

/** Keeps the text; false when the browser refuses. */
export function remember(name: string, text: string, shelf: Shelf = 'localStorage'): boolean {
  try {
    window[shelf].setItem(PREFIX + name, text);
    return true;
  } catch {
    return false;
  }
}

/** Calls back when another tab of this browser changes what is remembered under this name. */
export function onOtherTab(name: string, changed: (text: string) => void): void {
  window.addEventListener('storage', ({ key, newValue }) => {
    if (key === PREFIX + name && newValue !== null) changed(newValue);
  });
}
