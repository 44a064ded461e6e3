import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { chunkGroups } from './src/found/chunks.ts';
import { inHead } from './src/found/in-head.ts';
import { found } from './src/found/integration.ts';
import { offline } from './src/offline/integration.ts';

/** MDX pages carry a directive that the bundler reports once a page; it means nothing here. */
function dropDirectiveNoise(level, log, handler) {
  if (log.code !== 'MODULE_LEVEL_DIRECTIVE') handler(level, log);
}

const WORKED_OUT = [
  'link/known',
  ...['topics', 'checks', 'parts', 'tasks', 'risks'].map((name) => `content/told/${name}`),
];
const worked = WORKED_OUT.map((name) => fileURLToPath(new URL(`./src/${name}.ts`, import.meta.url)));

/** The scripts that stand in the head of a page, as they are printed there. */
const headScripts = ['first-colours', 'expected-notice'].map((name) =>
  inHead(readFileSync(new URL(`./src/layouts/${name}.js`, import.meta.url), 'utf8')),
);
const hashOf = (script) => `sha256-${createHash('sha256').update(script).digest('base64')}`;

/** Puts the lists that modules come to in their place, so that pages do not load what the lists were made from. */
function workedOut(paths) {
  const modules = new Set(paths.map((path) => path.replaceAll('\\', '/')));
  return {
    name: 'worked-out',
    enforce: 'pre',
    async load(id) {
      if (!modules.has(id)) return null;
      const lists = Object.entries(await import(pathToFileURL(id).href));
      return lists.map(([name, list]) => `export const ${name} = ${JSON.stringify(list)};`).join('\n');
    },
  };
}

/** What a later chunk needs is fetched with it by tags in the page; what a worker fetches has no page. */
const preloaded = (_file, chunks, { hostId }) => (/\/answers\./.test(hostId) ? [] : chunks);

/**
 * Builds a worker among the chunks of the pages, so that both load the same files and the trade travels once. Left to
 * itself the bundler builds each worker apart, with a trade of its own.
 */
function workersAmongChunks() {
  return {
    name: 'workers-among-chunks',
    apply: 'build',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    configEnvironment: (name) =>
      name === 'client'
        ? {
            build: {
              modulePreload: { polyfill: false, resolveDependencies: preloaded },
              rolldownOptions: {
                output: { codeSplitting: { groups: chunkGroups() }, chunkFileNames },
              },
            },
          }
        : undefined,
    async transform(code, id) {
      const [call, from] = /new URL\('([^']+\.ts)', import\.meta\.url\)/.exec(code) ?? [];
      if (!call || !id.includes('/islands/')) return null;
      const worker = await this.resolve(from, id);
      const chunk = this.emitFile({ type: 'chunk', id: worker.id, name: basename(from, '.ts') });
      return code.replace(call, `import.meta.ROLLUP_FILE_URL_${chunk}`);
    },
  };
}

/** A chunk that is divided by what wants it would be called after all of that. */
const chunkFileNames = ({ name }) => `_astro/${name.split(/[_~]/)[0]}.[hash].js`;

/** The sums are pure: a module of which a page uses nothing is left out, whoever else names it. */
const doesSomething = (id) => !id.includes('/src/calc/');

export default defineConfig({
  output: 'static',
  // Where this copy stands on the web, if anybody has said: without it no address is made up.
  ...(process.env.HALFNUT_SITE ? { site: process.env.HALFNUT_SITE } : {}),
  base: process.env.HALFNUT_BASE || '/',
  trailingSlash: 'always',
  // The list of what a device keeps is made last, of what the others have written.
  integrations: [preact(), mdx(), found(), offline()],
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
      scriptDirective: { hashes: headScripts.map(hashOf) },
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self' blob:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  vite: {
    plugins: [workedOut(worked), workersAmongChunks()],
    build: {
      rolldownOptions: { onLog: dropDirectiveNoise, treeshake: { moduleSideEffects: doesSomething } },
    },
  },
});
