import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain',
};

export interface Served {
  /** Address of the app, with the sub-path and a closing slash. */
  readonly address: string;
  /** What is served from now on: another build, as after an update of the host. */
  folder: string;
  /** Which requests, by path below the app, break off as when the signal goes. */
  breaksOff: (path: string) => boolean;
  stop(): Promise<void>;
}

/** Serves a folder as a plain static host would, under a sub-path. */
export async function serve(folder: string, subPath = '/', port = 0): Promise<Served> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const asked = pathname.startsWith(subPath) ? pathname.slice(subPath.length) : undefined;
    if (served.breaksOff(asked ?? '')) {
      request.socket.destroy();
      return;
    }
    const file = asked === undefined ? undefined : normalize(asked === '' ? 'index.html' : decodeURIComponent(asked));
    try {
      if (file === undefined || file.startsWith('..')) throw new Error('outside');
      const body = await readFile(join(served.folder, file));
      response.writeHead(200, {
        'content-type': types[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end('not found');
    }
  });
  await new Promise<void>((done) => server.listen(port, '127.0.0.1', done));
  const at = (server.address() as AddressInfo).port;
  const served: Served = {
    address: `http://localhost:${at}${subPath}`,
    folder,
    breaksOff: () => false,
    stop: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
  return served;
}
