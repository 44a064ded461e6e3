import { anchorIn, isDrawnLate, isPath, placeIn, withPlace } from './asked-place.ts';
import { reach, show, unfold } from './reach-place.ts';

/**
 * Links marked with data-keep-path carry the path that stands in the address bar; their anchor goes before it. Of a
 * comparison the first path is carried. A page that was asked for at a place is shown there.
 */
const pathNow = (): string | undefined =>
  isPath(window.location.hash) ? window.location.hash.split(';')[0] : undefined;

function carry(link: HTMLAnchorElement | SVGAElement): void {
  const path = pathNow();
  if (path === undefined) return;
  if (!('hash' in link)) {
    link.setAttribute('href', (link.getAttribute('href') ?? '').split('#')[0] + path);
    return;
  }
  const anchor = anchorIn(link.hash);
  if (anchor !== undefined) link.search = withPlace(link.search, anchor);
  link.hash = path;
}

function carryAll(): void {
  const links = 'a[data-keep-path]';
  for (const link of document.querySelectorAll<HTMLAnchorElement | SVGAElement>(links)) carry(link);
}

/** After the picture: a press carries its own link at once, and the address is written only after it is told. */
let soon = 0;
function carrySoon(): void {
  window.clearTimeout(soon);
  soon = window.setTimeout(carryAll, 100);
}

/** Goes to the target of a link inside the page; the path stays where it is, and Back leads to where the reader was. */
function stayOnPage(link: HTMLAnchorElement, event: Event): void {
  const anchor = link.hash.slice(1);
  const target = document.getElementById(anchor);
  if (!target || pathNow() === undefined) return;
  event.preventDefault();
  const { search, hash } = window.location;
  window.history.pushState(window.history.state, '', withPlace(search, anchor) + hash);
  show(target);
}

function onPress(event: Event): void {
  const link = event.target instanceof Element ? event.target.closest('a') : null;
  if (!link) return;
  if (link.hasAttribute('data-keep-path')) carry(link);
  else if (event.type === 'click' && link.getAttribute('href')?.startsWith('#')) stayOnPage(link, event);
}

/** Where the reader comes back to a page, the browser knows the place better; what is drawn late is beyond it. */
function comeBack(place: string): void {
  const look = () => (document.getElementById(place) ? undefined : reach(place));
  if (document.readyState === 'complete') look();
  else window.addEventListener('load', look, { once: true });
}

/** Shows what the address asks for. An anchor that is still to be drawn makes room for the path that will come. */
function arrive(): void {
  const { hash, search } = window.location;
  const anchor = anchorIn(hash);
  const target = anchor === undefined ? null : document.getElementById(anchor);
  if (target && unfold(target)) target.scrollIntoView();
  if (anchor !== undefined && !target && isDrawnLate(anchor))
    window.history.replaceState(window.history.state, '', withPlace(search, anchor));
  const place = placeIn(window.location.search);
  const [visit] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  if (place !== undefined) (visit?.type === 'navigate' ? reach : comeBack)(place);
}

arrive();
carryAll();
document.addEventListener('halfnut:path', carrySoon);
for (const kind of ['click', 'auxclick', 'contextmenu', 'focusin'])
  document.addEventListener(kind, onPress, true);
