import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

const dist = join(import.meta.dirname, '..', 'dist');
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
};
const packed = new Map<string, Buffer>();

function packedFile(file: string): Buffer {
  let bytes = packed.get(file);
  if (!bytes) {
    bytes = brotliCompressSync(readFileSync(file));
    packed.set(file, bytes);
  }
  return bytes;
}

function fileOf(address: string): string | undefined {
  const path = normalize(decodeURIComponent(new URL(address, 'http://here').pathname));
  const file = join(dist, path.endsWith('/') ? `${path}index.html` : path);
  return file.startsWith(dist) && statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** The built site as a good host sends it: packed with brotli, hashed files kept for a year. For measuring only. */
export async function servePacked(): Promise<{ readonly address: string; readonly close: () => void }> {
  const server = createServer((request, response) => {
    const file = fileOf(request.url ?? '/');
    if (!file) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      'content-encoding': 'br',
      'cache-control': file.includes('_astro') ? 'public, max-age=31536000, immutable' : 'no-cache',
    });
    response.end(packedFile(file));
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
}
