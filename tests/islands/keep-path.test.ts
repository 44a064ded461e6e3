// A link with an anchor keeps both the owner's path and its place, and a page shows the place that it was asked for.
import { fireEvent } from '@testing-library/preact';
import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { anchorIn, isDrawnLate, isPath, placeIn, withPlace } from '../../src/islands/asked-place.ts';
import { reach } from '../../src/islands/reach-place.ts';
import { askedPlace, isDrawnLate as isDrawnLateForIslands } from '../../src/islands/shared/places.ts';

const PATH = '#2?s=light';
const at = (place: string) => window.history.replaceState(null, '', place);
const link = (id: string) => document.getElementById(id) as HTMLAnchorElement;
const shown = vi.fn();

/** The path was changed, and the picture after it is drawn. */
async function changed(): Promise<void> {
  document.dispatchEvent(new CustomEvent('halfnut:path'));
  await new Promise((drawn) => setTimeout(drawn, 150));
}

beforeAll(async () => {
  Element.prototype.scrollIntoView = function scrolled(this: Element) {
    shown(this.id);
  };
  await import('../../src/islands/keep-path.ts');
});

beforeEach(() => {
  shown.mockClear();
  document.body.innerHTML = `
    <a id="plain" href="/plan/" data-keep-path>Plan</a>
    <a id="to-checks" href="/plan/#checks" data-keep-path>Checks</a>
    <a id="asked" href="/lathe/?at=bore#swing" data-keep-path>Swing</a>
    <a id="here" href="#part">Here</a>
    <details><summary>More</summary><h2 id="part">Part</h2></details>`;
});

test('an anchor goes before the path, beside what the query holds', async () => {
  at(`/book/?back=control${PATH}`);
  await changed();
  expect(link('plain').getAttribute('href')).toMatch(/\/plan\/#2\?s=light$/);
  expect(link('to-checks').getAttribute('href')).toMatch(/\/plan\/\?place=checks#2\?s=light$/);
  expect(link('asked').getAttribute('href')).toMatch(/\/lathe\/\?at=bore&place=swing#2\?s=light$/);
});

test('a link that was carried once keeps its place with the next path', async () => {
  at(`/book/${PATH}`);
  await changed();
  at('/book/#2?s=heavy;2?s=light');
  fireEvent.focusIn(link('to-checks'));
  expect(link('to-checks').getAttribute('href')).toMatch(/\/plan\/\?place=checks#2\?s=heavy$/);
});

test('without a path an anchor stays an anchor', async () => {
  at('/book/#part');
  await changed();
  expect(link('to-checks').getAttribute('href')).toBe('/plan/#checks');
});

test('a place on the same page is shown, opened, focused and put in the history, and the path stays', () => {
  at(`/book/?back=control${PATH}`);
  fireEvent.click(link('here'));
  expect(window.location.search + window.location.hash).toBe(`?back=control&place=part${PATH}`);
  expect(document.activeElement?.id).toBe('part');
  expect(document.querySelector('details')?.open).toBe(true);
  expect(shown).toHaveBeenCalledWith('part');
});

test('a place that is drawn late is reached when it is there, and left alone once the reader goes on', async () => {
  reach('check-lash');
  expect(shown).not.toHaveBeenCalled();
  document.body.insertAdjacentHTML('beforeend', '<table><tr id="check-lash"><td>Lash</td></tr></table>');
  await vi.waitFor(() => expect(document.activeElement?.id).toBe('check-lash'));
  fireEvent.keyDown(document.body);
  shown.mockClear();
  document.body.insertAdjacentHTML('beforeend', '<p>More</p>');
  await new Promise((done) => setTimeout(done));
  expect(shown).not.toHaveBeenCalled();
});

test('who asks for a check that is not among theirs is led to the list', () => {
  document.body.insertAdjacentHTML('beforeend', '<h2 id="risks">Risks</h2>');
  reach('risk-seized-bolts');
  expect(shown).toHaveBeenCalledWith('risks');
});

test('a path is told from an anchor by its first sign', () => {
  expect(isPath(PATH)).toBe(true);
  expect(anchorIn(PATH)).toBeUndefined();
  expect(anchorIn('#check-lash')).toBe('check-lash');
  expect(anchorIn('')).toBeUndefined();
  expect(anchorIn('#1?s=a')).toBeUndefined();
  expect(placeIn(withPlace('?place=a&at=b', 'c'))).toBe('c');
});

test('the islands read the place that the script of the page wrote', () => {
  at(`/plan/${withPlace('?at=b', 'check-lash')}${PATH}`);
  expect(askedPlace()).toBe('check-lash');
  at('/plan/');
  expect(askedPlace()).toBeUndefined();
});

test.each([
  ['checks', true],
  ['check-carriage-rapid', true],
  ['tasks', true],
  ['how-are-you', false],
  ['checks?s=a', false],
])('%s is the anchor of something drawn late: %s', (anchor, is) => {
  expect(isDrawnLate(anchor)).toBe(is);
  expect(isDrawnLateForIslands(anchor)).toBe(is);
});
