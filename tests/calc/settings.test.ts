// The sheet of settings: what is worked out stands there, the rest is a blank, and no figure across is left unsaid.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { designOf } from '../../src/calc/design.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { type Setting, settingsOf } from '../../src/calc/settings.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';
import { asText } from '../../src/export/text.ts';
import { asWords } from '../../src/export/units.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const sheetOf = (path: Path): Setting[] =>
  settingsOf(designOf(planState(path, machineOf(path.size, path.facts)).state));

const sheet = (changes: Parameters<typeof pathOf>[0] = {}, facts: Record<string, number> = {}): Setting[] =>
  sheetOf(pathOf(changes, 'medium', { facts }));

const line = (settings: readonly Setting[], id: string): Setting | undefined =>
  settings.find((setting) => setting.id === id);

test('500 random paths: ids once, every line holds a figure, words or a blank, and says how', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const settings = sheetOf(path);
      const ids = settings.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { id, value, text, writeIn, how } of settings) {
        expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        expect(value !== undefined || text !== undefined || writeIn, id).toBe(true);
        if (value) expect(Number.isFinite(value.value), id).toBe(true);
        expect(how.length, id).toBeGreaterThan(8);
      }
    }),
    { numRuns: quickly(500) },
  );
}, 300_000);

test('every length and speed across the work says diameter or radius', () => {
  const lengths = new Set(['m', 'm/s', 'm/s²', '1/m']);
  const across = sheet({}, { 'cross-play': 0.0001 }).filter(
    ({ axis, value }) => axis === 'cross' && value && lengths.has(value.unit),
  );
  expect(across.length).toBeGreaterThan(6);
  for (const { id, diameterOrRadius } of across) expect(diameterOrRadius, id).toBeDefined();
  expect(line(sheet(), 'cross-program-mode')!.diameterOrRadius).toBe('diameter');
});

test('a figure that nobody worked out is a blank, one that the owner measured is not lost', () => {
  expect(line(sheet(), 'cross-play')).toMatchObject({ writeIn: true });
  expect(line(sheet(), 'cross-play')!.value).toBeUndefined();
  expect(line(sheet({}, { 'cross-play': 0.00008 }), 'cross-play')!.value!.value).toBe(0.00008);
});

test('one driven slide has one set of lines', () => {
  const axes = new Set(
    sheet({ 'driven-axes': 'carriage-only', 'cross-screw': null }).map(({ axis }) => axis),
  );
  expect(axes.has('carriage')).toBe(true);
  expect(sheet({ 'driven-axes': 'carriage-only' }).some(({ id }) => id.startsWith('cross-'))).toBe(false);
});

test('the lowest of chuck and lathe limits the speed, never more than the lathe came with', () => {
  const limit = (chuck: number) =>
    line(
      sheet({}, { 'spindle-speed-max': 2000 / 60, 'chuck-marked-speed': chuck / 60 }),
      'spindle-speed-limit',
    )!.value!;
  expect(limit(1500).value * 60).toBeCloseTo(1500, 6);
  expect(limit(4000).value * 60).toBeCloseTo(2000, 6);
});

test('the stop table stands on the sheet: nothing starts when power returns, and power cannot brake when it is gone', () => {
  const settings = sheet();
  expect(line(settings, 'stop-return')!.text).toContain('stay dead');
  expect(line(settings, 'stop-dip')!.text).toContain('coasts');
  expect(line(settings, 'stop-guard')).toBeDefined();
  expect(line(sheet({ 'chuck-guard': 'no-guard' }), 'stop-guard')).toBeUndefined();
});

test('the report carries the sheet and the text prints each line of it', () => {
  const report = evaluate(pathOf({}), currentEdition);
  const text = asText(report);
  for (const { label } of report.settings) expect(text).toContain(label);
  expect(text).toContain('________');
});

test('pulses for each length print without a lost digit', () => {
  expect(asWords({ value: 1_259_842.52, unit: '1/m', origin: { kind: 'answered' } })).toBe(
    '1259.84252 for each mm',
  );
  expect(asWords({ value: 0.04, unit: 'm/s', origin: { kind: 'answered' } })).toBe('2400 mm/min');
});
