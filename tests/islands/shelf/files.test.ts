import { beforeEach, describe, expect, test, vi } from 'vitest';
import { bringIn, wholeShelf } from '../../../src/islands/shelf/file-work.ts';
import {
  $damaged,
  $shelf,
  annotate,
  duplicate,
  lookAgain,
  remove,
  rename,
  undoRemove,
  wholePath,
} from '../../../src/islands/shelf/kept-paths.ts';
import { MOST_PATHS } from '../../../src/islands/shelf/record.ts';

vi.mock('../../../src/islands/compute.ts', () => ({ reportOf: (path: unknown) => ({ path }) }));

const put = (id: string, fragment: string, own?: object, about: object = {}): void => {
  localStorage.setItem(`halfnut/shelf/${id}`, JSON.stringify({ version: 1, rev: id, fragment, ...about }));
  if (own) localStorage.setItem(`halfnut/own/${id}`, JSON.stringify({ version: 1, own }));
};
const fragment = (mm: number) => `1?edition=2026-12&size=small&swing=${mm}`;
const file = (text: string) => new Blob([text]);
const texts = (): Record<string, string> => ({ ...localStorage });
const idsNow = () =>
  $shelf
    .get()
    .map(({ id }) => id)
    .toSorted();

beforeEach(() => {
  localStorage.clear();
  put(
    'a',
    fragment(180),
    { allowance: 0.1 },
    { name: 'Garage', note: 'Ask the club', made: '2026-12-01T10:00:00.000Z' },
  );
  put('b', fragment(200), undefined, { from: { id: 'a', name: 'Garage' } });
  lookAgain();
});

describe('all paths in one file', () => {
  test('come back on an empty device as they were, own part, name, note and origin', async () => {
    const { text, count } = await wholeShelf('2026-12-05');
    const [before, own] = [$shelf.get(), await wholePath($shelf.get().find(({ id }) => id === 'a')!)];
    expect(count).toBe(2);
    localStorage.clear();
    expect(await bringIn(file(text))).toMatchObject({
      added: ['Garage', 'Path 2 of the file'],
      already: [],
      notes: [],
    });
    expect($shelf.get()).toEqual(before);
    expect(await wholePath($shelf.get().find(({ id }) => id === 'a')!)).toEqual(own);
  });

  test('are said to be there already, and nothing is written', async () => {
    const { text } = await wholeShelf('2026-12-05');
    const before = texts();
    expect(await bringIn(file(text))).toMatchObject({ added: [], already: ['Garage', 'Path 2 of the file'] });
    expect(texts()).toEqual(before);
  });

  test('get places of their own where other paths have their ids, and once only', async () => {
    const { text } = await wholeShelf('2026-12-05');
    put('a', fragment(250));
    const before = texts();
    expect(await bringIn(file(text))).toMatchObject({ added: ['Garage'], already: ['Path 2 of the file'] });
    expect(texts()).toMatchObject(before);
    expect($shelf.get()).toHaveLength(3);
    expect(await bringIn(file(text))).toMatchObject({ added: [] });
    expect($shelf.get()).toHaveLength(3);
  });

  test('carry along what could not be read, which stays here too', async () => {
    localStorage.setItem('halfnut/shelf/zz', '{"version":1,"fragm');
    localStorage.setItem('halfnut/own/b', '{"version":1,"own":{"allow');
    const { text } = await wholeShelf('2026-12-05');
    expect($damaged.get()).toEqual([{ id: 'zz', text: '{"version":1,"fragm' }]);
    expect(JSON.parse(text).unread).toEqual([
      { id: 'zz', text: '{"version":1,"fragm' },
      { id: 'b', text: '{"version":1,"own":{"allow' },
    ]);
    expect((await bringIn(file(text))).notes).toEqual([expect.stringMatching(/^2 of its texts/)]);
    expect(localStorage.getItem('halfnut/shelf/zz')).toBe('{"version":1,"fragm');
  });

  test('that find no room are named, and the others are there', async () => {
    const { text } = await wholeShelf('2026-12-05');
    localStorage.clear();
    for (let at = 0; at < MOST_PATHS - 1; at += 1) put(`x${at}`, fragment(100 + at));
    expect(await bringIn(file(text))).toMatchObject({ added: ['Garage'], without: ['Path 2 of the file'] });
  });

  test('a file of another kind changes nothing and says why', async () => {
    const before = texts();
    const { added, notes } = await bringIn(file('name,price\nscrew,5'));
    expect(added).toEqual([]);
    expect(notes.join(' ')).toMatch(/holds no paths.*Nothing was changed/);
    expect(texts()).toEqual(before);
  });
});

test.each([
  ['half a text', '{"version":1,"rev":"r","fragment":"1?size'],
  ['a later version', '{"version":2,"rev":"r","fragment":"1?size=small"}'],
  ['a link of a later version', '{"version":1,"rev":"r","fragment":"2?size=small"}'],
  ['a name that is none', '{"version":1,"rev":"r","fragment":"1?size=small","name":{}}'],
  ['an origin that is none', '{"version":1,"rev":"r","fragment":"1?size=small","from":"a"}'],
  ['a list', '[]'],
])('%s on the shelf is shown as what cannot be read, and the others stay', (_, text) => {
  localStorage.setItem('halfnut/shelf/zz', text);
  localStorage.setItem('halfnut/path', 'how are you');
  lookAgain();
  expect(idsNow()).toEqual(['a', 'b']);
  expect($damaged.get()).toEqual([
    { id: 'zz', text },
    { id: 'path', text: 'how are you' },
  ]);
});

test('a name and a note hold no letters that a file cannot hold', async () => {
  rename('a', ' Gar\u0007age ');
  annotate('a', 'two\nlines\u0000');
  expect($shelf.get().find(({ id }) => id === 'a')).toMatchObject({ name: 'Gar age', note: 'two\nlines' });
});

describe('a path taken off the shelf', () => {
  test('comes back whole, with what was set aside', () => {
    localStorage.setItem('halfnut/own/a/aside-1', '{');
    const before = texts();
    remove('a');
    expect(Object.keys(texts()).filter((name) => /\/a(\/|$)/.test(name))).toEqual([]);
    expect(undoRemove()).toBe(true);
    expect(texts()).toEqual(before);
  });

  test('finds another place where its own is taken', () => {
    remove('a');
    put('a', fragment(250));
    expect(undoRemove()).toBe(true);
    expect($shelf.get().map(({ fragment }) => fragment)).toEqual(
      expect.arrayContaining([fragment(180), fragment(200), fragment(250)]),
    );
    expect(JSON.parse(localStorage.getItem('halfnut/shelf/a')!).fragment).toBe(fragment(250));
  });

  test('that could not be read comes back too', () => {
    localStorage.setItem('halfnut/shelf/zz', '{');
    remove('zz');
    expect(localStorage.getItem('halfnut/shelf/zz')).toBeNull();
    undoRemove();
    expect(localStorage.getItem('halfnut/shelf/zz')).toBe('{');
  });
});

test('a copy has all of its path and its own days; names and notes are changed without touching another', async () => {
  const copy = duplicate('a')!;
  expect(copy.kept).toBe('kept');
  expect(idsNow()).toEqual(['a', 'b', copy.id].toSorted());
  const made = $shelf.get().find(({ id }) => id === copy.id)!;
  expect(made).toMatchObject({ name: 'Garage (copy)', note: 'Ask the club', fragment: fragment(180) });
  expect((await wholePath(made)).allowance).toBe(0.1);
  const before = localStorage.getItem('halfnut/shelf/a');
  rename(copy.id, '  ');
  annotate(copy.id, '');
  expect($shelf.get().find(({ id }) => id === copy.id)).toMatchObject({ named: false, note: '' });
  expect(localStorage.getItem('halfnut/shelf/a')).toBe(before);
});
