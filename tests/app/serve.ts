import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { basename, extname, join, normalize } from 'node:path';

/** A folder served on loopback, as any static host would: no logic, no fallback. */
export interface Served {
  readonly address: string;
  readonly close: () => Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.csv': 'text/csv',
};

/** @param alter what is sent in place of a file's bytes. */
export async function serveFolder(
  folder: string,
  alter: (name: string, body: Buffer) => Buffer | string = (_, body) => body,
): Promise<Served> {
  const server: Server = createServer(async (request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://local').pathname));
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    try {
      const body = alter(basename(file), await readFile(file));
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
      response.end(body);
    } catch {
      response.writeHead(404, { 'content-type': 'text/plain' });
      response.end('not here');
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
