import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = join(import.meta.dirname, '..', '..', 'src', 'styles');

/** A rule of a style sheet: where it stands, what it is for, and its declarations. */
export interface Rule {
  sheet: string;
  selector: string;
  says: Array<{ property: string; value: string }>;
}

const read = (sheet: string): string =>
  readFileSync(join(folder, sheet), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');

const declarations = (body: string): Rule['says'] =>
  [...body.matchAll(/([\w-]+)\s*:\s*([^;]+);/g)].map(([, property = '', value = '']) => ({
    property,
    value: value.replace(/\s+/g, ' ').trim(),
  }));

/** Every innermost rule of a sheet, in order; the conditions around it are left out. */
export const rulesOf = (sheet: string): Rule[] =>
  [...read(sheet).matchAll(/([^{};]+)\{([^{}]*)\}/g)].map(([, selector = '', body = '']) => ({
    sheet,
    selector: selector.replace(/\s+/g, ' ').trim(),
    says: declarations(body),
  }));

/** Every sheet that is shown on a screen, but the one that gives the colours their names. */
export const sheets = readdirSync(folder).filter(
  (sheet) => sheet.endsWith('.css') && !/^(tokens|print|plan-paper)\.css$/.test(sheet),
);

/** Names of colours with their values, `#rrggbb`: as the sheet gives them by light and by dark. */
export const colours = ((): Record<'light' | 'dark' | 'darkBySystem', Map<string, string>> => {
  const named = rulesOf('tokens.css').map(({ selector, says }) => ({
    selector,
    values: new Map(
      says
        .filter(({ value }) => /^#[0-9a-f]{3,6}$/i.test(value))
        .map(({ property, value }) => [property.replace(/^--/, ''), value]),
    ),
  }));
  const under = (selector: string) => named.find((rule) => rule.selector === selector)?.values ?? new Map();
  return {
    light: under(':root'),
    dark: under(':root[data-theme="dark"]'),
    darkBySystem: under(':root:not([data-theme="light"])'),
  };
})();
