import { afterEach, expect, it, vi } from 'vitest';
import { canSend, copy, send } from '../../../src/islands/share/send-words.ts';

afterEach(() => vi.unstubAllGlobals());

const browserWith = (parts: object) => vi.stubGlobal('navigator', parts);

it('offers the sheet of the browser only where it takes a link', () => {
  browserWith({});
  expect(canSend('https://example.org/')).toBe(false);
  browserWith({ share: async () => {}, canShare: () => false });
  expect(canSend('https://example.org/')).toBe(false);
  browserWith({ share: async () => {} });
  expect(canSend('https://example.org/')).toBe(true);
});

it('says nothing where the owner turned away, and what to do where the browser refused', async () => {
  const refusing = (name: string) => browserWith({ share: () => Promise.reject(new DOMException('', name)) });
  refusing('AbortError');
  expect(await send('https://example.org/', 'Plan')).toBe('');
  refusing('NotAllowedError');
  expect(await send('https://example.org/', 'Plan')).toMatch(/Copy the link/);
});

it('selects the link where it may not be copied', async () => {
  const select = vi.fn();
  const writeText = vi.fn(async () => {});
  browserWith({ clipboard: { writeText } });
  expect(await copy('x', select)).toMatch(/^Copied/);
  expect(select).not.toHaveBeenCalled();
  browserWith({});
  expect(await copy('x', select)).toMatch(/selected/);
  expect(select).toHaveBeenCalledOnce();
});
