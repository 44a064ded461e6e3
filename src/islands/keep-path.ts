/**
 * Links marked with data-keep-path carry the path that stands in the address bar, and links inside the page leave it
 * alone: a fragment has room for one of the two only. Of a comparison the first path is carried.
 */
const isPath = (fragment: string): boolean => /^#?\d+\?/.test(fragment);

function carry(link: HTMLAnchorElement): void {
  if (isPath(window.location.hash)) link.hash = window.location.hash.split(';')[0]!;
}

function carryAll(): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-keep-path]')) carry(link);
}

/** Moves the focus to the target of a link inside the page without touching the address. */
function stayOnPage(link: HTMLAnchorElement, event: Event): void {
  const target = document.getElementById(link.hash.slice(1));
  if (!target || !isPath(window.location.hash)) return;
  event.preventDefault();
  target.scrollIntoView();
  target.focus({ preventScroll: true });
}

function onPress(event: Event): void {
  const link = event.target instanceof Element ? event.target.closest('a') : null;
  if (!link) return;
  if (link.hasAttribute('data-keep-path')) carry(link);
  else if (event.type === 'click' && link.getAttribute('href')?.startsWith('#')) stayOnPage(link, event);
}

carryAll();
document.addEventListener('halfnut:path', carryAll);
for (const kind of ['click', 'auxclick', 'contextmenu', 'focusin'])
  document.addEventListener(kind, onPress, true);
