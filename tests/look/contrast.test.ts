import { describe, expect, test } from 'vitest';
import { contrast } from './luminance.ts';
import { colours, rulesOf, sheets } from './style-sheets.ts';

/** What words are written in, on which grounds. WCAG 2.2, 1.4.3: at least 4.5. */
const WORDS: Record<string, readonly string[]> = {
  ink: ['paper', 'wash', 'wash2'],
  quiet: ['paper', 'wash'],
  'quiet-on-wash': ['paper', 'wash', 'wash2'],
  blue: ['paper', 'wash', 'wash2'],
  look: ['paper', 'wash', 'wash2'],
  stop: ['paper', 'wash', 'wash2'],
  ok: ['paper', 'wash', 'wash2'],
  on: ['blue'],
  'code-ink': ['code-ground'],
};

/** What a mark, the edge of a field or the ring of the focus is drawn in. WCAG 2.2, 1.4.11: at least 3. */
const MARKS: Record<string, readonly string[]> = {
  ink: ['paper', 'wash', 'wash2', 'hair'],
  quiet: ['paper', 'wash', 'wash2', 'hair'],
  blue: ['paper', 'wash', 'wash2', 'hair'],
  look: ['paper', 'wash', 'wash2'],
  stop: ['paper', 'wash', 'wash2'],
  ok: ['paper', 'wash', 'wash2'],
  on: ['blue', 'look', 'stop', 'ok', 'quiet'],
};

/** Lines that only part one thing from the next, and washes: nothing is told by them alone. */
const TELLS_NOTHING = ['frame', 'hair', 'wash', 'wash2'];

const pairs = (list: Record<string, readonly string[]>) =>
  Object.entries(list).flatMap(([over, grounds]) => grounds.map((ground) => [over, ground] as const));

const light = colours.light;
const dark = new Map([...light, ...colours.dark]);

describe.each([
  ['light', light],
  ['dark', dark],
])('%s', (_, colour) => {
  test.each(pairs(WORDS))('words in %s on %s are read: 4.5', (over, ground) => {
    expect(contrast(colour.get(over)!, colour.get(ground)!)).toBeGreaterThanOrEqual(4.5);
  });
  test.each(pairs(MARKS))('a mark in %s on %s is seen: 3', (over, ground) => {
    expect(contrast(colour.get(over)!, colour.get(ground)!)).toBeGreaterThanOrEqual(3);
  });
});

test('dark by choice and dark by the system are the same colours', () => {
  expect(colours.dark.size).toBeGreaterThan(10);
  expect([...colours.darkBySystem]).toEqual([...colours.dark]);
});

const rules = sheets.flatMap(rulesOf);
const named = (value: string): string[] =>
  [...value.matchAll(/var\(--([\w-]+)/g)].map(([, name = '']) => name);
const isColour = (name: string): boolean => light.has(name);

/** Rules that break a law of the colours, named by sheet and selector. */
const offenders = (breaks: (property: string, value: string, selector: string) => boolean): string[] =>
  rules.flatMap(({ sheet, selector, says }) =>
    says
      .filter(({ property, value }) => breaks(property, value, selector))
      .map(({ property, value }) => `${sheet}: ${selector} { ${property}: ${value} }`),
  );

test('words are written only in the colours that are measured as words', () => {
  expect(rules.length).toBeGreaterThan(500);
  expect(
    offenders(
      (property, value) =>
        property === 'color' && named(value).some((name) => isColour(name) && !(name in WORDS)),
    ),
  ).toEqual([]);
});

test('words lie only on the grounds that are measured', () => {
  const grounds = new Set([...Object.values(WORDS), ...Object.values(MARKS)].flat());
  const marks = new Set(Object.keys(MARKS));
  expect(
    offenders(
      (property, value) =>
        /^background/.test(property) &&
        named(value).some(
          (name) => isColour(name) && name !== 'shade' && !grounds.has(name) && !marks.has(name),
        ),
    ),
  ).toEqual([]);
});

test('a field, a button and a switch have an edge that is seen', () => {
  const control = /\b(input|select|textarea)\b|\.(button|segments|field-cells|blank|state-track)\b/;
  const inside = /::|\+ label|\.field-unit|\.field-step|\.field-cells >/;
  expect(
    offenders(
      (property, value, selector) =>
        /^border/.test(property) &&
        control.test(selector) &&
        !inside.test(selector) &&
        named(value).some((name) => TELLS_NOTHING.includes(name)),
    ),
  ).toEqual([]);
});

test('the ring of the focus is drawn in a colour that is seen', () => {
  expect(
    offenders(
      (property, value) =>
        property === 'outline' &&
        named(value).some((name) => isColour(name) && !['ink', 'blue'].includes(name)),
    ),
  ).toEqual([]);
});

test('no sheet names a colour of its own, but the black of paper', () => {
  expect(offenders((_, value) => /#(?!000\b)[0-9a-f]{3,8}\b|\b(rgb|hsl|oklch)a?\(/i.test(value))).toEqual([]);
});
