/** What the owner wishes of this device: kept, or not kept. Without a word the site keeps itself where that costs nothing. */
const KEY = 'halfnut/at-hand';
const LATER = 'halfnut/newer-later';

type Wish = 'yes' | 'no' | null;

/** What was wished last; a wish is remembered if the browser remembers anything. */
export function wish(value?: 'yes' | 'no'): Wish {
  try {
    if (value) localStorage.setItem(KEY, value);
    return localStorage.getItem(KEY) as Wish;
  } catch {
    return value ?? null;
  }
}

export const onWish = (changed: () => void): void =>
  window.addEventListener('storage', ({ key }) => {
    if (key === KEY) changed();
  });

/** Whether a newer copy is to wait until this tab is closed. */
export function later(value?: 'yes'): boolean {
  try {
    if (value) sessionStorage.setItem(LATER, value);
    return sessionStorage.getItem(LATER) !== null;
  } catch {
    return false;
  }
}

/** Whether megabytes are dear on this connection, as far as the browser tells. */
export function isDear(): boolean {
  const { connection } = navigator as {
    connection?: { saveData?: boolean; type?: string; effectiveType?: string };
  };
  return (
    connection?.saveData === true ||
    connection?.type === 'cellular' ||
    /2g/.test(connection?.effectiveType ?? '')
  );
}
