import { NEWER, type Said } from './words.ts';

const notice = document.querySelector('[data-newer]');

/** Puts the words, and what may be done, in each place of the page that is kept for them. */
export function say({ text, press }: Said, pressed?: () => void): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-at-hand]')) {
    const [words, button] = [place.querySelector('span'), place.querySelector('button')];
    if (!words || !button) continue;
    words.textContent = text;
    button.textContent = press ?? '';
    button.hidden = press === undefined;
    button.onclick = pressed ?? null;
  }
}

function button(text: string, pressed: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = 'button';
  made.textContent = text;
  made.onclick = pressed;
  return made;
}

/** A line over the page; with nothing to press it goes with the page. */
export function sayNewer(text: string, ...buttons: readonly HTMLButtonElement[]): void {
  const line = document.createElement('p');
  line.textContent = text;
  notice?.replaceChildren(line, ...buttons);
}

export function offerNewer(now: () => void, later: () => void): void {
  const wait = () => {
    notice?.replaceChildren();
    later();
  };
  sayNewer(NEWER, button('Use it now', now), button('Later', wait));
}
