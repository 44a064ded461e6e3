import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';

/** MDX pages carry a directive that the bundler reports once a page; it means nothing here. */
function dropDirectiveNoise(level, log, handler) {
  if (log.code !== 'MODULE_LEVEL_DIRECTIVE') handler(level, log);
}

export default defineConfig({
  output: 'static',
  base: process.env.HALFNUT_BASE || '/',
  trailingSlash: 'always',
  integrations: [preact(), mdx()],
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
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
  vite: { build: { rolldownOptions: { onLog: dropDirectiveNoise } } },
});
