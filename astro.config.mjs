import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
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

const firstColours = readFileSync(new URL('./src/layouts/first-colours.js', import.meta.url));
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
      scriptDirective: { hashes: [hashOf(firstColours)] },
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self' blob:",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  vite: { plugins: [workedOut(worked)], build: { rolldownOptions: { onLog: dropDirectiveNoise } } },
});
