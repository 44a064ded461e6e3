/**
 * Stands in every page itself, so it is short: when the page has loaded and is idle, it fetches what keeps the site on
 * the device (`at-hand.ts`, which the build puts beside the worker). Whether something was typed is noted from the start.
 */
const isText = (target: EventTarget | null): boolean =>
  target instanceof Element &&
  target.matches('textarea, input:not([type=radio], [type=checkbox], [type=range])');

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  document.addEventListener('input', ({ target }) => {
    if (isText(target)) document.documentElement.dataset.typed = '';
  });
  const script = `${import.meta.env.BASE_URL.replace(/\/?$/, '/')}at-hand-page.js`;
  const whenIdle = window.requestIdleCallback ?? ((run: () => void) => window.setTimeout(run, 1000));
  // Without a connection, and not kept: then there is nothing to say.
  window.addEventListener('load', () =>
    whenIdle(() => void import(/* @vite-ignore */ script).catch(() => undefined)),
  );
}

export {};
