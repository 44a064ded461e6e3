import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Colours of the light sheet, as the pages have them. */
export type Look = Readonly<
  Record<'paper' | 'ink' | 'quiet' | 'blue' | 'look' | 'frame' | 'hair' | 'wash' | 'wash2', string>
>;

/** Reads them from src/styles/tokens.css; `root` is the folder of the project. */
export function lookOf(root: string): Look {
  const css = readFileSync(join(root, 'src', 'styles', 'tokens.css'), 'utf8');
  const first = css.slice(css.indexOf(':root'), css.indexOf('}'));
  return Object.fromEntries(
    [...first.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, colour]) => [name, colour]),
  ) as Look;
}
