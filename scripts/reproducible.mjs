// Builds the site twice, in a sub-folder, each time as on another day's machine (time zone, language, folder of the result), and
// compares every byte. Names the files that differ, and those that name a place outside their sub-folder. About two builds long.
import { spawnSync } from 'node:child_process';
import { globSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const BASE = '/workshop/lathe/';
const SITE = 'https://example.org';
const MACHINES = [
  { name: 'first', TZ: 'Pacific/Auckland', LANG: 'C' },
  { name: 'second', TZ: 'America/Lima', LANG: 'de_DE.UTF-8' },
];

function build({ name, ...surroundings }) {
  const out = join(root, 'node_modules', '.cache', 'reproducible', name);
  rmSync(out, { recursive: true, force: true });
  const env = { ...process.env, ...surroundings, HALFNUT_BASE: BASE, HALFNUT_SITE: SITE };
  const command = [join(root, 'scripts', 'astro.mjs'), 'build', '--outDir', out];
  const { status } = spawnSync(process.execPath, command, {
    cwd: root,
    env,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (status !== 0) throw new Error(`The ${name} build failed.`);
  const isFile = (file) => statSync(join(out, file)).isFile();
  const files = globSync(['**/*', '**/.*'], { cwd: out }).filter(isFile).sort();
  return new Map(files.map((file) => [file, readFileSync(join(out, file))]));
}

const [first, second] = MACHINES.map(build);
const names = [...new Set([...first.keys(), ...second.keys()])].sort();
const same = (file) => first.has(file) && second.has(file) && first.get(file).equals(second.get(file));
const differ = names.filter((file) => !same(file));

/** Addresses of the site's own folders and files, written as if it stood at the root. */
const tops = [...new Set(names.map((file) => file.split('/')[0]))].map((top) => top.replaceAll('.', '\\.'));
const outside = new RegExp(`["'\`(=]/(?:${tops.join('|')})(?=["'\`)/?#])`);
const texts = names.filter((file) => /\.(?:html|js|css|json)$/.test(file));
const stray = texts.filter((file) => outside.test(first.get(file).toString()));

for (const file of differ) console.error(`differs: ${file}`);
for (const file of stray)
  console.error(`outside ${BASE}: ${file}: ${outside.exec(first.get(file).toString())?.[0]}`);
const bytes = [...first.values()].reduce((sum, { length }) => sum + length, 0);
console.log(
  `${names.length} files, ${(bytes / 1e6).toFixed(2)} MB: ${differ.length} differ, ${stray.length} leave ${BASE}`,
);
process.exitCode = differ.length + stray.length === 0 ? 0 : 1;
