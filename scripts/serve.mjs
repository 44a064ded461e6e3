// Serves the built site. PORT and HOST say where; the address is printed once it answers.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { preview } from 'astro';

process.env.ASTRO_TELEMETRY_DISABLED = '1';
const root = join(import.meta.dirname, '..');
const host = process.env.HOST || '127.0.0.1';
const port = Number(process.env.PORT || 4321);

if (!existsSync(join(root, 'dist', 'index.html'))) {
  console.error('Nothing built yet: run `npm run build` first, or `npm start` for both.');
  process.exit(1);
}

/** The headers that go with every file, as the build wrote them: what is tried here is what a host will send. */
function headers() {
  const file = join(root, 'dist', '_headers');
  const [first = ''] = existsSync(file) ? readFileSync(file, 'utf8').split(/\n(?=\S)/) : [];
  const lines = first.split('\n').slice(1);
  return Object.fromEntries(
    lines.map((line) =>
      line
        .trim()
        .split(/: (.*)/)
        .slice(0, 2),
    ),
  );
}

const server = await preview({
  root,
  logLevel: 'error',
  // An address typed without the last stroke opens its page, or our own page that says there is none.
  trailingSlash: 'ignore',
  server: { host, port, headers: headers() },
});
const base = `/${process.env.HALFNUT_BASE ?? ''}/`.replace(/\/+/g, '/');
console.log(`Halfnut is at http://${host}:${server.port}${base}  (Ctrl+C stops it)`);
