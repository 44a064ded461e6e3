// Says how much a page of the built site loads, in kB as a server with brotli sends it: first what it needs to paint and
// listen, then what follows by itself for the figures. One page of each kind is measured; --all measures every page.
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

const dist = join(import.meta.dirname, '..', 'dist');
const base = `/${process.env.HALFNUT_BASE ?? ''}/`.replace(/\/+/g, '/');

/** What a page fetches by itself after it listens; everything else that is named waits until it is asked for. */
const BY_ITSELF = new Set(['compute', 'worker', 'read-own', 'known-own', 'kept-paths']);

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
    ].filter((name) => BY_ITSELF.has(nameOf(name))),
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

function measure(page) {
  const html = readFileSync(join(dist, page), 'utf8');
  const files = (ending) =>
    new Set(
      [...html.matchAll(/_astro\/[^"'\s&]+/g)].map(([name]) => name).filter((name) => name.endsWith(ending)),
    );
  const first = reach(files('.js'), ({ atOnce }) => atOnce);
  const all = reach(files('.js'), ({ atOnce, later }) => [...atOnce, ...later]);
  return { html: size(page), css: sum(files('.css')), first: sum(first), all: sum(all) };
}

const pages = process.argv.includes('--all')
  ? Object.fromEntries(globSync('**/*.html', { cwd: dist }).map((file) => [base + file, file]))
  : Object.fromEntries(Object.entries(KINDS).map(([kind, page]) => [kind, `${page}index.html`]));

const cells = (...texts) => texts.map((text, at) => (at ? text.padStart(14) : text.padEnd(26))).join('');
console.log(cells('kB, brotli', 'HTML', 'CSS', 'JS to listen', 'JS with sums'));
for (const [name, file] of Object.entries(pages)) {
  const { html, css, first, all } = measure(file);
  console.log(cells(name, ...[html, css, first, all].map((kB) => kB.toFixed(1))));
}
