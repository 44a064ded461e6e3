/** Puts the reader at a place on the page, now or when it has been drawn. */

/** Where things stand that a page lists, for whoever asks for one that is not among the reader's own. */
const LISTS: Readonly<Record<string, string>> = {
  check: '#checks',
  part: '#parts',
  task: '#stages, #tasks',
  risk: '#risks',
  setting: '#settings',
};
/** How long a place is held, in ms, while what stands above it is still being drawn. */
const SETTLED = 3000;
const OWN_WAY = ['wheel', 'touchstart', 'pointerdown', 'keydown'] as const;

function placeOf(id: string): HTMLElement | null {
  const list = LISTS[id.split('-')[0]!];
  return document.getElementById(id) ?? (list ? document.querySelector<HTMLElement>(list) : null);
}

/** Opens whatever folds a place away; whether anything did. */
export function unfold(place: HTMLElement): boolean {
  let folded = false;
  for (let each: HTMLElement | null = place; each; each = each.parentElement) {
    if (!(each instanceof HTMLDetailsElement) || each.open) continue;
    each.open = true;
    folded = true;
  }
  return folded;
}

/** Scrolls to a place at once, without movement, and lets the keyboard go on from there. */
export function show(place: HTMLElement): void {
  unfold(place);
  place.scrollIntoView();
  if (place.tabIndex < 0) place.tabIndex = -1;
  place.dataset.reached = '';
  place.focus({ preventScroll: true });
}

/** Goes to a place as soon as it stands on the page, and stays with it until all is drawn or the reader goes elsewhere. */
export function reach(id: string): void {
  let found = false;
  const look = () => {
    const place = placeOf(id);
    if (!place) return;
    if (!found) setTimeout(stop, SETTLED);
    found = true;
    show(place);
  };
  const drawn = new MutationObserver(look);
  const stop = () => drawn.disconnect();
  for (const kind of OWN_WAY)
    window.addEventListener(kind, stop, { once: true, capture: true, passive: true });
  drawn.observe(document.body, { childList: true, subtree: true });
  look();
}
