// The script in the head of every page: what it expects, by the address and by what this device keeps.
import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';

const script = readFileSync('src/layouts/expected-notice.js', 'utf8');
const page = document.documentElement.dataset;

/** Runs it as the head does, and says what it expects. */
function expects(address: string, state: unknown = null): string | undefined {
  window.history.replaceState(state, '', address);
  new Function(script)();
  return page.expects;
}

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
  delete page.expects;
  page.edition = '2026-12';
});

test('who comes with nothing gets an outline', () => {
  expect(expects('/plan/')).toBe('outline');
});

test('who keeps a path is asked to open it, and is told no outline', () => {
  localStorage.setItem('halfnut/shelf/a', '{"path":"1?edition=2026-12"}');
  expect(expects('/plan/')).toBe('remembered');
});

test('a page that this tab wrote expects nothing', () => {
  expect(expects('/plan/', { line: 'a' })).toBe('');
});

test('a link of somebody, and one of older prices, are announced; one that is kept here is not', () => {
  expect(expects('/plan/#1?edition=2026-12&size=medium')).toBe('elsewhere');
  expect(expects('/plan/#1?edition=2026-11&size=medium')).toBe('elsewhere older');
  localStorage.setItem('halfnut/shelf/a', '{"path":"1?edition=2026-12&size=medium"}');
  expect(expects('/plan/#1?edition=2026-12&size=medium')).toBe('');
});

test('a browser that keeps nothing leaves the page as it is', () => {
  const kept = Object.getOwnPropertyDescriptor(globalThis, 'localStorage')!;
  Object.defineProperty(globalThis, 'localStorage', {
    configurable: true,
    get: () => {
      throw new Error('not allowed');
    },
  });
  expect(expects('/plan/')).toBeUndefined();
  Object.defineProperty(globalThis, 'localStorage', kept);
});
