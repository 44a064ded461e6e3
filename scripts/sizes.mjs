// Says how much a page of the built site loads, in kB as a server with brotli sends it: first what it needs to paint and
// listen, then what follows by itself for the figures. One page of each kind is measured; --all measures every page, and
// --hold ends with 1 where a page of a kind is over its budget (budgets.ts).
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';
import { ASKED, BUDGETS } from './budgets.ts';
import { KINDS } from './page-kinds.ts';

const dist = join(import.meta.dirname, '..', 'dist');
const base = `/${process.env.HALFNUT_BASE ?? ''}/`.replace(/\/+/g, '/');

/** What a page fetches by itself after it listens; everything else that is named waits until it is asked for. */
const BY_ITSELF = ['worker', 'answers-report', 'read-own', 'known-own', 'kept-paths', 'own-values'];

/** kB after brotli at its best, of a file below dist. */
const sizes = new Map();
function size(file) {
  if (!sizes.has(file)) {
    const params = { [constants.BROTLI_PARAM_QUALITY]: 11 };
    sizes.set(file, brotliCompressSync(readFileSync(join(dist, file)), { params }).length / 1000);
  }
  return sizes.get(file);
}

const sum = (files) => [...files].reduce((total, file) => total + size(file), 0);

const nameOf = (file) => /([^/]+?)\.[^.]+\.js$/.exec(file)?.[1] ?? file;

/** The chunks that a chunk names: at once, or later, by import() or as a worker. */
function named(file) {
  const text = readFileSync(join(dist, file), 'utf8');
  const of = (pattern) => [...text.matchAll(pattern)].map(([, name]) => `_astro/${name}`);
  return {
    atOnce: of(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g),
    later: [
      ...of(/import\(\s*["'`]\.\/([^"'`]+\.js)["'`]\s*\)/g),
      ...of(/new Worker\(["'`][^"'`]*_astro\/([^"'`]+\.js)["'`]/g),
    ],
  };
}

/** Everything reached from these chunks by imports of one kind after another. */
function reach(files, follow, found = new Set()) {
  for (const file of files) {
    if (found.has(file) || !existsSync(join(dist, file))) continue;
    found.add(file);
    reach(follow(named(file)), follow, found);
  }
  return found;
}

function measure(page, kind) {
  const html = readFileSync(join(dist, page), 'utf8');
  const files = (ending) =>
    new Set(
      [...html.matchAll(/_astro\/[^"'\s&]+/g)].map(([name]) => name).filter((name) => name.endsWith(ending)),
    );
  const first = reach(files('.js'), ({ atOnce }) => atOnce);
  const follows = [...BY_ITSELF, ...(ASKED[kind] ?? []).map((name) => `answers-${name}`)];
  const all = reach(files('.js'), ({ atOnce, later }) => [
    ...atOnce,
    ...later.filter((file) => follows.includes(nameOf(file))),
  ]);
  return { html: size(page), css: sum(files('.css')), listen: sum(first), sums: sum(all) };
}

const pages = process.argv.includes('--all')
  ? Object.fromEntries(globSync('**/*.html', { cwd: dist }).map((file) => [base + file, file]))
  : Object.fromEntries(Object.entries(KINDS).map(([kind, page]) => [kind, `${page}index.html`]));

const cells = (...texts) => texts.map((text, at) => (at ? text.padStart(14) : text.padEnd(26))).join('');
console.log(cells('kB, brotli', 'HTML', 'CSS', 'JS to listen', 'JS with sums'));
const over = [];
for (const [name, file] of Object.entries(pages)) {
  const sent = measure(file, name);
  const { html, css, listen, sums } = sent;
  console.log(cells(name, ...[html, css, listen, sums].map((kB) => kB.toFixed(1))));
  for (const [what, most] of Object.entries(BUDGETS[name] ?? {}))
    if (sent[what] > most) over.push(`${name}: ${what} ${sent[what].toFixed(1)} kB, at most ${most}`);
}
if (process.argv.includes('--hold') && over.length > 0) {
  console.error(`Over the budget of bytes:\n  ${over.join('\n  ')}`);
  process.exitCode = 1;
}
