import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A package of which something is sent to the browser. */
export interface Shipped {
  readonly name: string;
  readonly version: string;
  /** SPDX name. */
  readonly licence: string;
  /** Its licence, and its notice where it has one, as they are written. */
  readonly texts: readonly string[];
}

/** Licences that ask for no more than that they and the holder of the rights are named. */
const ALLOWED = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BlueOak-1.0.0'];

/** The package that a module of the bundle comes from; undefined for our own. */
export function packageOf(id: string): string | undefined {
  const [, helper] = /^\0(vite|rolldown)\//.exec(id) ?? [];
  const installed = id.replaceAll('\\', '/').split('node_modules/');
  if (installed.length < 2) return helper;
  return /^(?:@[^/]+\/)?[^/?]+/.exec(installed.at(-1)!)?.[0];
}

/** Gathers, while the site is bundled, the packages of which code goes to the browser. */
export function gathering(found: Set<string>) {
  return {
    name: 'shipped',
    generateBundle(
      this: { environment?: { name: string } },
      _: unknown,
      bundle: Readonly<Record<string, { modules?: Readonly<Record<string, { renderedLength: number }>> }>>,
    ) {
      if (this.environment && this.environment.name !== 'client') return;
      for (const { modules = {} } of Object.values(bundle))
        for (const [id, { renderedLength }] of Object.entries(modules)) {
          const name = renderedLength > 0 && packageOf(id);
          if (name) found.add(name);
        }
    },
  };
}

/** A tool's licence without those of what is packed into the tool, of which nothing is sent. */
const ownPart = (text: string): string =>
  text
    .replaceAll('\r\n', '\n')
    .split(/\n#+ Licen[cs]es of bundled dependencies/i)[0]!
    .trim();

/** Reads the licence of an installed package. Throws where it has none that is written out. */
export function readPackage(name: string, root: string): Shipped {
  const folder = join(root, 'node_modules', name);
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const files = globSync('{LICEN[CS]E,licen[cs]e,NOTICE,COPYING}{,.md,.txt}', { cwd: folder }).sort();
  if (files.length === 0) throw new Error(`${name} goes to the browser, and its licence is not written out.`);
  const texts = files.map((file) => ownPart(readFileSync(join(folder, file), 'utf8')));
  return { name, version, licence: String(license), texts };
}

/** The packages whose licence asks for more than to be named. */
export const notAllowed = (shipped: readonly Shipped[]): Shipped[] =>
  shipped.filter(({ licence }) => !ALLOWED.includes(licence));

const RULE = '-'.repeat(80);

/** What stands in licences.txt: our own licence, then each package with what it asks to be said. */
export function licencesText(own: string, shipped: readonly Shipped[]): string {
  const sorted = shipped.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const width = Math.max(...sorted.map(({ name, version }) => name.length + version.length + 1));
  const list = sorted.map(
    ({ name, version, licence }) => `  ${`${name} ${version}`.padEnd(width)}  ${licence}`,
  );
  const head = [
    'What this site is made of, and under which licences.',
    '',
    'No font is sent: the site uses those of the device. Drawings and pictures are its own.',
    'Of these packages something goes to the browser:',
    '',
    ...list,
  ];
  const pieces = sorted.map(({ name, version, texts }) => `${name} ${version}\n\n${texts.join('\n\n')}`);
  return `${[head.join('\n'), `Halfnut itself\n\n${own.trim()}`, ...pieces].join(`\n\n${RULE}\n\n`)}\n`;
}
