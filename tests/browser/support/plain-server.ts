import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

/** The built site on a server that can be put out of reach, and can serve other files in the place of some. */
export interface PlainServer {
  readonly address: string;
  /** Texts served in the place of files, by their address below the base. */
  readonly instead: Map<string, string>;
  isReachable: boolean;
  /** What was asked for and sent, by its address below the base. */
  readonly sent: string[];
  close(): Promise<void>;
}

const dist = join(import.meta.dirname, '..', '..', '..', 'dist');
const base = `/${process.env.HALFNUT_BASE ?? ''}/`.replace(/\/+/g, '/');

function fileOf(address: string): string | undefined {
  const file = join(dist, address.endsWith('/') || address === '' ? `${address}index.html` : address);
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** Serves what was built as any host of files would. */
export async function plainServer(): Promise<PlainServer> {
  const instead = new Map<string, string>();
  const sent: string[] = [];
  const server = createServer(({ url = '', socket }, answer) => {
    const { pathname } = new URL(url, 'http://127.0.0.1');
    const address = decodeURI(pathname.slice(base.length));
    const file = pathname.startsWith(base) ? fileOf(address) : undefined;
    if (!made.isReachable) return socket.destroy();
    if (!file) return answer.writeHead(404).end('no such file');
    sent.push(address);
    answer.writeHead(200, {
      'content-type': KINDS[extname(file)] ?? 'text/plain',
      'cache-control': 'no-cache',
    });
    return answer.end(instead.get(address) ?? readFileSync(file));
  });
  await new Promise<void>((ready) => {
    server.listen(0, '127.0.0.1', ready);
  });
  const { port } = server.address() as { port: number };
  const close = () =>
    new Promise<void>((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    });
  const made: PlainServer = {
    address: `http://127.0.0.1:${port}${base}`,
    instead,
    isReachable: true,
    sent,
    close,
  };
  return made;
}
